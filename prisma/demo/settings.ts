import { workspaceEntry } from "../../lib/tax/workspace-entry.ts";

/** Nova Scotia, not registered for HST (so it is cost), money at 7 per cent a year. */
export const DEMO_SETTINGS = workspaceEntry.parse({
  name: "Demo",
  homeCurrency: "CAD",
  taxRegion: "CA-NS",
  registeredFor: [],
  moneyRate: "7",
  recheckDays: 30,
  timeZone: "America/Halifax",
});
