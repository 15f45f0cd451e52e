/** A mistake with its words: `path` is the name of the field it belongs to ("" for the whole form). */
export type FormFault = Readonly<{ path: string; text: string }>;

/** What a form's action answers with when it did not go on to another page: what was typed, and what is wrong with it. */
export type FormState = Readonly<{
  values: Readonly<Record<string, readonly string[]>>;
  faults: readonly FormFault[];
  /** One sentence about the whole form, e.g. that the database cannot be reached. */
  trouble: string | null;
  /** Counts the answers, so that fields are drawn anew with what was typed. */
  attempt: number;
}>;

/** A form nobody has sent yet. */
export const FRESH_FORM: FormState = { values: {}, faults: [], trouble: null, attempt: 0 };

/** What a form's server action is. */
export type FormAction = (previous: FormState, form: FormData) => Promise<FormState>;
