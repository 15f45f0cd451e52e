/** Letters that the fonts every PDF reader has are without, and what stands for them there. */
const INSTEAD: Readonly<Record<string, string>> = {
  "\u2212": "\u2013",
  "\u00a0": " ",
  "\u202f": " ",
  "\u2009": " ",
  "\u2044": "/",
  "\u2032": "'",
  "\u2033": '"',
  "\u2264": "<=",
  "\u2265": ">=",
  "\u0141": "L",
  "\u0142": "l",
  "\u0110": "D",
  "\u0111": "d",
};
/** What those fonts have beyond Latin-1: the Windows 1252 set. */
const BEYOND = new Set("€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ");

function has(letter: string): boolean {
  const code = letter.codePointAt(0) ?? 0;
  return (code >= 0x20 && code < 0x7f) || (code >= 0xa1 && code <= 0xff) || BEYOND.has(letter);
}

/** A letter without the marks the fonts do not have it with: "ő" as "o", "⅝" as "5/8"; "?" where nothing is near. */
function nearest(letter: string): string {
  const known = INSTEAD[letter];
  if (known !== undefined) return known;
  const bare = letter
    .normalize("NFKD")
    .replace(/\p{Mark}/gu, "")
    .replaceAll("\u2044", "/");
  return bare !== "" && [...bare].every(has) ? bare : "?";
}

/** Text in the letters of a PDF's own fonts (Windows 1252): a minus is a dash as wide, the rest the nearest there is. */
export function plainLetters(text: string): string {
  // A fraction spelled out must not run into the number before it: 7⅝ is 7 5/8.
  const apart = text.normalize("NFC").replace(/(\d)(?=[\u2150-\u215e])/gu, "$1 ");
  return [...apart].map((letter) => (has(letter) ? letter : nearest(letter))).join("");
}
