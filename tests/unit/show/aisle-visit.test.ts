import { expect, test } from "vitest";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { aisleSnapshot } from "../../../lib/show/aisle-snapshot-of.ts";
import { toCheckAt } from "../../../lib/show/aisle-visit.ts";
import { daysAgo, observation, TODAY } from "../../support/price-example.ts";
import { factsOf, needOf, revisionOf } from "../../support/stock-example.ts";

const TAKEN = {
  takenAt: "2026-03-02T12:00:00Z",
  workspace: { id: "one", kind: "owner", name: "One", timeZone: "America/Halifax" },
} as const;

function check(observations: readonly Observation[], needed = true) {
  const facts = factsOf({ observations, requirements: needed ? [needOf("a", revisionOf(10))] : [] });
  const snapshot = aisleSnapshot(facts, exposure(TODAY, facts), [], TAKEN);
  return toCheckAt(snapshot, "near", TODAY)
    .filter(({ materialId }) => materialId === "sheet")
    .map(({ why, money }) => [why, money?.amount.toFixed(2) ?? null]);
}

test("a price older than the recheck interval is checked, with the money that rests on it", () => {
  // 10 x 24.00
  expect(check([observation("24.00", { seenOn: daysAgo(31) })])).toEqual([["stale", "240.00"]]);
  expect(check([observation("24.00", { seenOn: daysAgo(30) })])).toEqual([]);
});

test("an offer that ends within a week comes first, whatever its age", () => {
  const ends = (days: number) => observation("20.00", { terms: "special", until: daysAgo(-days) });
  expect(check([ends(7)])).toEqual([["lapses", "200.00"]]);
  expect(check([ends(8)])).toEqual([]);
});

test("what is needed and was never seen here is to be looked for; what nobody needs is left alone", () => {
  const elsewhere = observation("24.00", { storeId: "far" });
  expect(check([elsewhere])).toEqual([["unseen", null]]);
  expect(check([elsewhere], false)).toEqual([]);
});
