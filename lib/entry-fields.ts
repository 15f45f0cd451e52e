import * as z from "zod";
import { isLocalDate, type LocalDate, localDate } from "./calendar/local-date.ts";
import { Decimal, decimal } from "./decimal.ts";
import type { FaultCode } from "./fault.ts";
import { purchaseUnitNamed, unitNamed } from "./measure/unit-aliases.ts";
import { PURCHASE_UNITS, type Quantity } from "./measure/units.ts";
import { type CurrencyCode, isCurrencyCode, MINOR_UNITS } from "./money/currencies.ts";

/** Limits of what may be entered; each stands here only. */
export const FIRST_DAY = localDate("1990-01-01");
const LONGEST_NUMBER = 40;
const LARGEST = decimal("1000000000");
const NAME_LENGTH = 200;
const NOTE_LENGTH = 2000;

/** zod's wrong-kind message as our code: nothing given is "missing", anything else is `otherwise`. */
function kind(otherwise: FaultCode): (issue: { input?: unknown; code?: string }) => FaultCode {
  return (issue) =>
    issue.code === "unrecognized_keys" ? "unknown-field" : issue.input === undefined ? "missing" : otherwise;
}

/** Text changed by `read` into a value, or refused with the code it answers. Errors: missing, not-text and those of `read`. */
export function textAs<T>(read: (text: string) => { value: T } | FaultCode) {
  return z.string({ error: kind("not-text") }).transform((text, context): T => {
    const answer = read(text);
    if (typeof answer !== "string") return answer.value;
    context.issues.push({ code: "custom", message: answer, input: text });
    return z.NEVER;
  });
}

/** An object whose unknown keys are refused by name. Errors: missing, not-an-object, unknown-field. */
export function fields<S extends z.core.$ZodLooseShape>(shape: S) {
  return z.strictObject(shape, { error: kind("not-an-object") });
}

/** A list of at most `most`. Errors: missing, not-a-list, too-many. */
export function listOf<S extends z.ZodType>(item: S, most = 100) {
  return z.array(item, { error: kind("not-a-list") }).max(most, "too-many");
}

/** Yes or no. Errors: missing, not-yes-or-no. */
export function flag() {
  return z.boolean({ error: kind("not-yes-or-no") });
}

type NumberLimits = Readonly<{ zero: boolean; places: number }>;

function decimalText({ zero, places }: NumberLimits) {
  return textAs<Decimal>((text) => {
    if (text.length > LONGEST_NUMBER) return "too-long";
    if (!/^-?\d+(\.\d+)?$/.test(text)) return "not-a-number";
    const value = decimal(text);
    if (value.isZero()) return zero ? { value: decimal(0) } : "not-positive";
    if (value.isNegative()) return zero ? "negative" : "not-positive";
    if (value.greaterThan(LARGEST)) return "too-large";
    return value.decimalPlaces() > places ? "too-many-places" : { value };
  }).meta({ pattern: "^\\d+(\\.\\d+)?$", examples: ["41.98"] });
}

/** An amount of money above zero, as text, at most 1e9 and 6 places. Errors: too-long, not-a-number, not-positive, too-large, too-many-places. */
export function amount() {
  return decimalText({ zero: false, places: 6 });
}

/** The same, zero allowed. Errors: those of amount, "negative" for below zero. */
export function amountOrZero() {
  return decimalText({ zero: true, places: 6 });
}

/** An amount as { amount, currency } or as bare text, whose currency the entry around it knows. Errors: those of amount, unknown-currency. */
export function amountIn() {
  return z.preprocess(
    (given) => (typeof given === "string" ? { amount: given } : given),
    fields({ amount: amount(), currency: currency().optional() }),
  );
}

/** A quantity above zero, as text, at most 1e9 and 6 places. Errors: those of amount. */
export function quantity() {
  return decimalText({ zero: false, places: 6 });
}

/** The same, zero allowed (a count that found nothing). */
export function quantityOrZero() {
  return decimalText({ zero: true, places: 6 });
}

/** An exchange rate above zero, as text, at most 12 places. Errors: those of amount. */
export function rate() {
  return decimalText({ zero: false, places: 12 });
}

/** A share of a whole above 0 and at most 1, as text (a lot's condition). Errors: not-a-number, not-positive, percent-out-of-range. */
export function share() {
  return decimalText({ zero: false, places: 6 }).refine((value) => value.lessThanOrEqualTo(1), {
    error: "percent-out-of-range",
  });
}

/** A percentage from 0 to `most`, as text, at most 6 places. Errors: not-a-number, percent-out-of-range, too-many-places. */
export function percent(most = 100) {
  return textAs<Decimal>((text) => {
    if (text.length > LONGEST_NUMBER) return "too-long";
    if (!/^-?\d+(\.\d+)?$/.test(text)) return "not-a-number";
    const value = decimal(text);
    if (value.lessThan(0) || value.greaterThan(most)) return "percent-out-of-range";
    return value.decimalPlaces() > 6 ? "too-many-places" : { value: value.abs() };
  }).meta({ pattern: "^\\d+(\\.\\d+)?$", examples: ["15"] });
}

/** A day from 1990-01-01 on. Errors: not-a-day, day-too-early. Whether it lies ahead is asked where today is known. */
export function day() {
  return textAs<LocalDate>((text) => {
    if (!isLocalDate(text)) return "not-a-day";
    return text < FIRST_DAY ? "day-too-early" : { value: text };
  }).meta({ format: "date" });
}

/** A client-made UUID of any version, in small letters. Errors: not-an-id. */
export function id() {
  return textAs<string>((text) =>
    /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text) ? { value: text.toLowerCase() } : "not-an-id",
  ).meta({ format: "uuid" });
}

// A NUL cannot be stored in PostgreSQL text; half a surrogate pair cannot be written as UTF-8.
const UNSTORABLE = /\0|\p{Surrogate}/u;

function textUpTo(length: number) {
  return textAs<string>((text) => {
    const value = text.trim();
    if (value.length > length) return "too-long";
    if (UNSTORABLE.test(value)) return "not-text";
    return value === "" ? "missing" : { value };
  }).meta({ maxLength: length });
}

/** A name of 1 to 200 characters, trimmed. Errors: missing, too-long, not-text. */
export function name() {
  return textUpTo(NAME_LENGTH);
}

/** A note of 1 to 2,000 characters, trimmed; leave it out for none. Errors: missing, too-long, not-text. */
export function note() {
  return textUpTo(NOTE_LENGTH);
}

/** An ISO 4217 code. Errors: unknown-currency. */
export function currency() {
  return textAs<CurrencyCode>((text) => (isCurrencyCode(text) ? { value: text } : "unknown-currency")).meta({
    enum: Object.keys(MINOR_UNITS),
  });
}

/** A unit a price or a quantity can be stated in; the usual abbreviations are understood. Errors: unknown-unit. */
export function purchaseUnit() {
  return textAs((text) => {
    const value = purchaseUnitNamed(text);
    return value === null ? "unknown-unit" : { value };
  }).meta({ examples: [...PURCHASE_UNITS] });
}

/** A size of a material as "value unit", e.g. "48 in". Errors: not-a-size, unknown-unit and those of a quantity. */
export function size() {
  return textAs<Quantity>((text) => {
    const parts = /^\s*(\S+?)\s*([a-z"][a-z"²³.\s\d-]*)$/i.exec(text);
    const unit = unitNamed(parts?.[2] ?? "");
    const value = quantity().safeParse(parts?.[1] ?? "");
    if (parts === null || (!value.success && value.error.issues[0]?.message === "not-a-number"))
      return "not-a-size";
    if (!value.success) return (value.error.issues[0]?.message ?? "not-a-size") as FaultCode;
    return unit === null ? "unknown-unit" : { value: { value: value.data, unit } };
  }).meta({ examples: ["48 in", "1220 mm", "8 ft", "33.3 sq ft"] });
}

/** One of a fixed list; capitals and blanks for hyphens are forgiven ("Sheet goods"). Errors: unknown-choice. */
export function choice<const T extends string>(choices: readonly T[]) {
  return textAs<T>((text) => {
    const key = text
      .trim()
      .toLowerCase()
      .replaceAll(/[\s_]+/g, "-");
    const value = choices.find((one) => one === key);
    return value === undefined ? "unknown-choice" : { value };
  }).meta({ enum: [...choices] });
}

/** A whole number of days, 1 to 3,650: a JSON number or its digits as text. Errors: not-a-number, not-positive, too-large. */
export function days() {
  return z.preprocess(
    (given) => (typeof given === "string" && /^\d{1,9}$/.test(given) ? Number(given) : given),
    z
      .int({ error: kind("not-a-number") })
      .min(1, "not-positive")
      .max(3650, "too-large"),
  );
}

/** A rule between fields of one entry. It is asked even when other fields are refused, so that no fault hides another. */
export type Rule = Readonly<{
  path: string;
  code: FaultCode;
  broken: (entry: Readonly<Record<string, unknown>>) => boolean;
}>;

/** The schema with rules between its fields. */
export function withRules<S extends z.ZodType>(schema: S, rules: readonly Rule[]): S {
  return rules.reduce<S>(
    (ruled, { path, code, broken }) =>
      ruled.refine((entry) => !(isRecord(entry) && broken(entry)), {
        error: code,
        path: path.split("."),
        when: () => true,
      }),
    schema,
  );
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Two days in order where both are given. Fault: days-reversed at the later one. */
export function inOrder(from: string, until: string): Rule {
  return {
    path: until,
    code: "days-reversed",
    broken: (entry) => {
      const [first, last] = [entry[from], entry[until]];
      return isLocalDate(first) && isLocalDate(last) && first > last;
    },
  };
}

/** A smallest and a largest quantity in order where both are given. Fault: minimum-above-maximum at the smallest. */
export function notAbove(least: string, most: string): Rule {
  return {
    path: least,
    code: "minimum-above-maximum",
    broken: (entry) => {
      const [low, high] = [entry[least], entry[most]];
      return low instanceof Decimal && high instanceof Decimal && low.greaterThan(high);
    },
  };
}
