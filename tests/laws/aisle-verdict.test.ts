import * as fc from "fast-check";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import type { AisleSnapshot } from "../../lib/show/aisle-snapshot.ts";
import { aisleSnapshot } from "../../lib/show/aisle-snapshot-of.ts";
import { aisleVerdict, aisleVerdictText } from "../../lib/show/aisle-verdict.ts";
import { loggedPrice } from "../../lib/show/logged-price.ts";
import { loggedPriceText } from "../../lib/show/logged-price-text.ts";
import { law } from "../support/law.ts";
import { TODAY } from "../support/price-example.ts";
import { MARKET, somePrice } from "../support/random-prices.ts";
import { recordedLot } from "../support/random-stock.ts";
import { someWorkspace } from "../support/random-workspace.ts";
import { factsOf, needOf, revisionOf } from "../support/stock-example.ts";

const TAKEN = {
  takenAt: "2026-03-02T12:00:00Z",
  workspace: { id: "one", kind: "owner", name: "One", timeZone: "America/Halifax" },
} as const;

/** A snapshot that went over the wire and lay on the phone. */
function carried(facts: ReturnType<typeof factsOf>, history: readonly Observation[]): AisleSnapshot {
  const taken = aisleSnapshot(facts, exposure(TODAY, facts), history, TAKEN);
  return JSON.parse(JSON.stringify(taken)) as AisleSnapshot;
}

function alike(facts: ReturnType<typeof factsOf>, logged: Observation): void {
  const snapshot = carried(facts, facts.observations);
  const plain = snapshot.materials.find(({ id }) => id === logged.materialId);
  const material = facts.materials.get(logged.materialId);
  if (plain === undefined || material === undefined) throw new Error("the material is in both");
  const history = facts.observations.filter(({ materialId }) => materialId === logged.materialId);
  const server = loggedPrice(logged, history, exposure(TODAY, facts), facts, material);
  const phone = aisleVerdict(logged, plain, snapshot, TODAY);
  const text = loggedPriceText(server, "en-CA");
  expect(aisleVerdictText(phone, "en-CA")).toEqual(phone.lowestTold ? text : { ...text, lowest: null });
  expect(phone.lowestTold).toBe(logged.seenOn >= TODAY);
  expect(phone.logged.needs).toEqual(server.needs);
  const totals = ({ means }: typeof server) => [means.totalHere, means.totalElsewhere, means.totalDifference];
  expect(totals(phone.logged)).toEqual(totals(server));
  expect(phone.logged.elsewhere).toEqual(server.elsewhere);
}

const lot = recordedLot("lot");
const market = fc
  .record({
    seen: fc.array(somePrice(400), { maxLength: 16 }),
    logged: somePrice(0, 1),
    need: fc.integer({ min: 1, max: 40 }),
    used: fc.boolean(),
    stock: lot,
  })
  .map(({ seen, logged, need, used, stock }) => ({
    facts: factsOf({
      valuation: MARKET,
      requirements: [needOf("a", revisionOf(need, { acceptsUsed: used }))],
      observations: seen,
      lots: [stock.lot],
      events: stock.events,
    }),
    logged,
  }));

test("a verdict worked out on the phone is the server's, to the cent: four stores, taxes, currencies, all terms", () => {
  law(
    fc.property(market, ({ facts, logged }) => alike(facts, logged)),
    { numRuns: 600 },
  );
});

test("and so it is for several jobs and lots", () => {
  const logged = somePrice(0).map((seen) => ({ ...seen, storeId: "near", materialId: "sheet" }));
  law(
    fc.property(someWorkspace, logged, (facts, seen) => alike(facts, seen)),
    { numRuns: 400 },
  );
});

test("of a price seen before the snapshot, nothing is said of lows, and all else is the same", () => {
  const earlier = market.map(({ facts, logged }) => ({
    facts,
    logged: { ...logged, seenOn: plusDays(TODAY, -3) },
  }));
  law(
    fc.property(earlier, ({ facts, logged }) => alike(facts, logged)),
    { numRuns: 100 },
  );
});
