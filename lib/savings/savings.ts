import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "../exposure/exposure-facts.ts";
import type { SavingsReport } from "./savings-figures.ts";

/** All that savings are computed from. observations: the history back to the oldest lot. */
export type SavingsFacts = ExposureFacts;

export function savings(
  _from: LocalDate | null,
  _until: LocalDate | null,
  _day: LocalDate,
  _facts: SavingsFacts,
): SavingsReport {
  throw new Error("not built yet");
}
