import type { Written } from "../../lib/fault.ts";

/** Why something could not be taken back or brought back, as a query for `Cannot`: the event in the way is named. */
export function afterRefusal(written: Written<unknown>): string {
  const fault = written.ok || written.why !== "faults" ? undefined : written.faults[0];
  const { kind = "", on = "", quantity = "" } = fault?.values ?? {};
  return new URLSearchParams({ done: "cannot", why: fault?.code ?? "", kind, on, quantity }).toString();
}
