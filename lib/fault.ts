import type * as z from "zod";

/** A person's mistake, as a value: which field, what is wrong (a code; the words stand where it is shown). */
export type Fault = Readonly<{ path: string; code: FaultCode; values?: Readonly<Record<string, string>> }>;

/** Every kind of mistake the program names. Words: app/_words (screens) and app/api/v1 (interface). */
export const FAULT_CODES = [
  "missing",
  "not-text",
  "too-long",
  "not-a-number",
  "not-positive",
  "negative",
  "too-large",
  "too-many-places",
  "not-a-day",
  "day-too-early",
  "day-ahead",
  "days-reversed",
  "unknown-currency",
  "unknown-unit",
  "unit-not-convertible",
  "unknown-choice",
  "unknown-field",
  "unknown-region",
  "unknown-time-zone",
  "not-an-id",
  "not-there",
  "archived",
  "percent-out-of-range",
  "minimum-above-maximum",
  "until-required",
  "amount-not-expected",
  "free-only-for-salvage",
  "more-than-free",
  "more-than-allocated",
  "event-in-the-way",
  "before-acquisition",
  "not-received-yet",
  "tax-unknown",
  "rate-unknown",
  "name-taken",
  "already-closed",
  "already-in-use",
  "wrong-material",
  "not-an-object",
  "not-a-list",
  "too-many",
  "not-yes-or-no",
  "not-a-size",
  "same-currency",
  "used-id",
  "not-a-length",
  "length-unit-missing",
  "mixed-units",
  "comma-unclear",
  "fraction-unclear",
  "inches-past-a-foot",
  "not-an-area",
  "not-a-slope",
  "slope-flat",
  "slope-too-steep",
  "larger-than-wall",
  "not-whole",
  "cover-too-wide",
  "not-a-triangle",
  "wing-too-wide",
  "no-room-for-studs",
  "yield-known",
  "used-not-accepted",
  "shorter-than-piece",
  "said-twice",
  "not-asked",
  "not-salvage",
  "alternative-wrong-kind",
  "alternative-thinner",
  "alternative-lower-grade",
  "alternative-wrong-hand",
  "alternative-wrong-jamb",
  "alternative-wrong-size",
  "alternative-wrong-treatment",
  "alternative-not-comparable",
  "stands-in-elsewhere",
  "weight-unknown",
  "more-than-held",
  "currency-not-the-stores",
  "more-than-in-place",
  "already-there",
  "nothing-on-hand",
  "nothing-stored",
  "space-unknown",
  "after-return-day",
  "more-than-ordered",
  "other-currency",
  "free-asked",
  "held-by-an-act",
  "counted-twice",
  "paid-in-full",
  "same-requirement",
  "more-than-drawn",
  "nothing-left-over",
  "password-too-short",
  "wrong-name-or-password",
  "too-many-tries",
  "code-void",
  "last-owner",
  "day-unclear",
  "unknown-shape",
  "not-a-month",
  "pair-not-said",
] as const;
export type FaultCode = (typeof FAULT_CODES)[number];

/** What an accepted or refused write answers with. `repeated`: the same entry had been accepted before. */
export type Written<T> =
  | Readonly<{ ok: true; value: T; repeated: boolean }>
  | Readonly<{ ok: false; why: "faults"; faults: readonly Fault[] }>
  | Readonly<{ ok: false; why: "conflict"; stored: T }>
  | Readonly<{ ok: false; why: "not-there" }>;

/** A zod message that is one of our codes is kept; zod's own kinds are put into our codes. */
function codeOf(issue: z.core.$ZodIssue): FaultCode {
  if ((FAULT_CODES as readonly string[]).includes(issue.message)) return issue.message as FaultCode;
  if (issue.code === "unrecognized_keys") return "unknown-field";
  if (issue.code === "invalid_value") return "unknown-choice";
  if (issue.code === "too_big") return "too-long";
  if (issue.code === "invalid_type")
    return issue.input === undefined ? "missing" : issue.expected === "string" ? "not-text" : "not-an-object";
  return "not-text";
}

/** Every fault of a refused parse, in the order of its fields. An unknown key is named by its own path. */
export function faultsOf(error: z.ZodError): Fault[] {
  return error.issues.flatMap((issue) => {
    const at = issue.path.map(String);
    if (issue.code === "unrecognized_keys")
      return issue.keys.map((key) => ({ path: [...at, key].join("."), code: codeOf(issue) }));
    return [{ path: at.join("."), code: codeOf(issue) }];
  });
}
