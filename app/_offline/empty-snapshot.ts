import { todayIn } from "../../lib/calendar/local-date.ts";
import { type AisleSnapshot, SNAPSHOT_VERSION } from "../../lib/show/aisle-snapshot.ts";

/**
 * What the form works from on a phone that never reached its server: nothing is known, and a price can be logged all the
 * same. Its currency and region are put right when the server is reached first (`freshSnapshot`).
 */
export function emptySnapshot(now: Date): AisleSnapshot {
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  return {
    version: SNAPSHOT_VERSION,
    takenAt: "",
    workspace: { id: "", kind: "owner", name: "", timeZone },
    today: todayIn(timeZone, now),
    homeCurrency: "CAD",
    taxRegion: "",
    registrations: [],
    regions: [],
    regionNames: [],
    recheckDays: 30,
    rates: [],
    chosenSources: {},
    stores: [],
    projects: [],
    materials: [],
  };
}
