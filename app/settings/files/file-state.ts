import type { FormState } from "../../_ui/form-state.ts";

/** What a file comes to, in words: shown before it is taken in, and after. */
export type FileReport = Readonly<{
  said: string;
  columns: readonly Readonly<{ key: string; label: string; figures?: boolean }>[];
  rows: readonly Readonly<{ key: string; cells: readonly string[] }>[];
  more: string | null;
}>;

/** What the action of a form with a file answers with. */
export type FileState = FormState & Readonly<{ report?: FileReport }>;
export type FileAction = (previous: FileState, form: FormData) => Promise<FileState>;

/** Bytes of a file that is taken: thirty years of every rate the ECB publishes are two million. */
export const MOST_BYTES = 7_000_000;
