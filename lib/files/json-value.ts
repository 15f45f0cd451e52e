/** A value of a JSON text whose shape nobody vouches for. */
export type Json = unknown;

/** The value of a JSON text, or undefined when it is none. Never throws. */
export function jsonValue(text: string): Json {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return undefined;
  }
}

/** Whether a text means to be JSON. */
export function looksLikeJson(text: string): boolean {
  return /^\uFEFF?\s*[{[]/.test(text);
}

/** A member of an object, or undefined. */
export function member(value: Json, name: string): Json {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  return Object.hasOwn(value, name) ? (value as Readonly<Record<string, Json>>)[name] : undefined;
}

/** The items of a list, or none. */
export function items(value: Json): readonly Json[] {
  return Array.isArray(value) ? value : [];
}

/** A text, or a number as it is written; anything else is empty. */
export function plainText(value: Json): string {
  if (typeof value === "string") return value.trim();
  return typeof value === "number" ? String(value) : "";
}
