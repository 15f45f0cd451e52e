const GROUPED = /^\d{1,3}(?:[ .,']\d{3})+$/;
const LONGEST = 40;

/** The decimal and group signs of a language, "." and "," for en-CA. A space stands for any kind of space. */
function signsOf(locale: string): { decimal: string; group: string } {
  const parts = new Intl.NumberFormat(locale).formatToParts(1_234_567.5);
  const sign = (type: "decimal" | "group") => parts.find((part) => part.type === type)?.value ?? "";
  return { decimal: sign("decimal"), group: sign("group").normalize("NFKC") };
}

/** Digits in groups of three, parted by one and the same sign, without the signs; null when they are not. */
function ungrouped(text: string): string | null {
  if (/^\d*$/.test(text)) return text;
  const signs = new Set(text.replace(/\d/g, ""));
  return GROUPED.test(text) && signs.size === 1 ? text.replace(/\D/g, "") : null;
}

function canonical(whole: string | null, part: string): string | null {
  if (whole === null || !/^\d*$/.test(part) || (whole === "" && part === "")) return null;
  const start = whole.replace(/^0+(?=\d)/, "") || "0";
  return part === "" ? start : `${start}.${part}`;
}

/** One sign, seen once, with three digits after it: "1,049". Only the language can say what it is. */
function byLanguage(head: string, sign: string, tail: string, locale: string): string | null {
  const signs = signsOf(locale);
  if (sign === signs.decimal) return canonical(head, tail);
  return sign === signs.group ? canonical(head + tail, "") : null;
}

/**
 * An amount as typed, to canonical decimal text: "42.97", "42,97", "$1,049.99", "1 049,99" -> "1049.99".
 * A currency sign, a three-letter currency code or "%" beside it is dropped. "." or "," is the decimal sign when both stand
 * there (the last one), or when what follows is not three digits; else the language decides.
 * Null when it cannot be told: "1.2.3", "-5", "1e30", "1.049" in a language that uses neither sign so.
 * Units: as typed. Rounds: never. Errors: null. Source: the group and decimal signs of Unicode CLDR, through Intl.
 */
export function parseAmount(typed: string, locale: string): string | null {
  if (typed.length > LONGEST) return null;
  const text = typed
    .normalize("NFKC")
    .replace(/[’]/g, "'")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/^(?:[A-Z]{3}|[A-Z]{0,2}\p{Sc}) ?/u, "")
    .replace(/ ?(?:[A-Z]{3}|\p{Sc}|%)$/u, "");
  if (!/^[\d.,' ]*\d[\d.,' ]*$/.test(text)) return null;
  const at = Math.max(text.lastIndexOf("."), text.lastIndexOf(","));
  if (at < 0) return canonical(ungrouped(text), "");
  const sign = text.charAt(at);
  const head = text.slice(0, at);
  const tail = text.slice(at + 1);
  if (head.includes(sign)) return canonical(ungrouped(text), "");
  const couldBeGroup = tail.length === 3 && /^[1-9]\d{0,2}$/.test(head);
  return couldBeGroup ? byLanguage(head, sign, tail, locale) : canonical(ungrouped(head), tail);
}

/** What was understood, in the signs of the language, for reading back: "1049.99" -> "1,049.99". */
export function readBack(amount: string, locale: string): string {
  const places = amount.split(".")[1]?.length ?? 0;
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  }).format(amount as Intl.StringNumericLiteral);
}
