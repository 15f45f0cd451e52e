import type { LocalDate } from "../calendar/local-date.ts";
import type { ExposureFacts } from "./exposure-facts.ts";
import type { WorkspaceExposure } from "./exposure-figures.ts";

export type { ExposureFacts } from "./exposure-facts.ts";

export function exposure(_day: LocalDate, _facts: ExposureFacts): WorkspaceExposure {
  throw new Error("not built yet");
}
