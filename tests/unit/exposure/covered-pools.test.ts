import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import type { Project, Requirement } from "../../../lib/projects/project.ts";
import { day, daysAgo, observation, SHEET, TODAY } from "../../support/price-example.ts";
import { factsOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const by = (neededBy: string) => ({ neededBy: day(neededBy) });
const of = (projectId: string) => ({ projectId });

/** What finishing each requirement costs: home currency as text, null where nothing covers any of it. */
function costs(
  requirements: readonly Requirement[],
  observations: readonly Observation[],
  projects: readonly Project[] = [projectOf("job"), projectOf("other")],
) {
  const facts = factsOf({ requirements, observations, projects });
  const lines = exposure(TODAY, facts).projects.flatMap((project) => project.lines);
  return Object.fromEntries(
    lines.map((line) => [line.requirementId, line.costToFinish?.amount.toFixed(2) ?? null]),
  );
}
const shelf = observation("20.00");
const breakAt15 = observation("18.00", { terms: "quantity-break", minQuantity: decimal(15) });

describe("quantities of one material", () => {
  const a = needOf("a", revisionOf(10));
  const b = needOf("b", revisionOf(7));

  test("of one project are bought together", () => {
    expect(costs([a, b], [shelf, breakAt15])).toEqual({ a: "180.00", b: "126.00" });
  });

  test("of two projects are not", () => {
    expect(costs([a, { ...b, ...of("other") }], [shelf, breakAt15])).toEqual({ a: "200.00", b: "140.00" });
  });

  test("are shared back by quantity, to the cent, and lose none", () => {
    const pack = observation("3.34", { packSize: decimal(3), per: { quantity: decimal(3), unit: "sheet" } });
    const one = (id: string) => needOf(id, revisionOf(1));
    expect(costs([one("a"), one("b"), one("c")], [pack])).toEqual({ a: "1.12", b: "1.11", c: "1.11" });
  });

  test("are bought beyond the need where that is cheaper, and what is over is said", () => {
    const facts = factsOf({ requirements: [needOf("a", revisionOf(14))], observations: [shelf, breakAt15] });
    const [pool] = exposure(TODAY, facts).projects[0]?.pools ?? [];
    expect([pool?.cost.amount.toFixed(2), pool?.over.toNumber()]).toEqual(["270.00", 1]);
  });
});

describe("an offer of six", () => {
  const six = observation("12.00", { terms: "clearance", maxQuantity: decimal(6) });
  const soon = needOf("soon", revisionOf(4, by("2026-04-01")), of("other"));
  const late = needOf("late", revisionOf(4, by("2026-05-01")));

  test("is given out once, to the job that needs it first", () => {
    expect(costs([late, soon], [shelf, six])).toEqual({ soon: "48.00", late: "64.00" });
  });

  test("goes to live jobs before planned ones, however soon those need it", () => {
    const planned = projectOf("other", { statuses: [{ status: "planned", from: day("2026-01-01") }] });
    expect(costs([late, soon], [shelf, six], [planned, projectOf("job")])).toEqual({
      soon: "64.00",
      late: "48.00",
    });
  });

  test("is not used up by a job that is over", () => {
    const over = projectOf("other", { statuses: [{ status: "finished", from: day("2026-01-01") }] });
    expect(costs([late, soon], [shelf, six], [over, projectOf("job")])).toEqual({
      soon: "0.00",
      late: "48.00",
    });
  });

  test("covers no more than six, and the rest has no price", () => {
    const facts = factsOf({ requirements: [needOf("a", revisionOf(10))], observations: [six] });
    expect(exposure(TODAY, facts).projects[0]?.lines[0]).toMatchObject({
      uncovered: decimal(4),
      unpriced: true,
      costToFinish: { amount: decimal(72) },
    });
  });
});

describe("a stale offer", () => {
  const stale = observation("15.00", { storeId: "far", seenOn: daysAgo(31) });

  test("is not used where a fresh one covers all, however cheap it was", () => {
    expect(costs([needOf("a", revisionOf(10))], [shelf, stale])).toEqual({ a: "200.00" });
  });

  test("is used for the part no fresh one can cover, and that part is said", () => {
    const six = observation("20.00", { terms: "clearance", maxQuantity: decimal(6) });
    const facts = factsOf({ requirements: [needOf("a", revisionOf(10))], observations: [six, stale] });
    expect(exposure(TODAY, facts).projects[0]?.lines[0]).toMatchObject({
      costToFinish: { amount: decimal(180) },
      restsOnStale: { amount: decimal(60) },
    });
  });
});

describe("an offer of used ones", () => {
  const used = observation("9.00", { terms: "used" });

  test("serves no requirement that does not accept used", () => {
    expect(costs([needOf("a", revisionOf(5))], [shelf, used])).toEqual({ a: "100.00" });
  });

  test("serves one that does", () => {
    expect(costs([needOf("a", revisionOf(5, { acceptsUsed: true }))], [shelf, used])).toEqual({ a: "45.00" });
  });

  test("serves, of several bought together, as many as accept it", () => {
    const some = [needOf("a", revisionOf(5, { acceptsUsed: true })), needOf("b", revisionOf(3))];
    const total = Object.values(costs(some, [shelf, used])).reduce((sum, cost) => sum + Number(cost), 0);
    expect(total).toBe(5 * 9 + 3 * 20);
  });
});

test("with nothing seen there is no cost, rather than a cost of zero", () => {
  expect(costs([needOf("a", revisionOf(5))], [])).toEqual({ a: null });
});

test("an accepted alternative is bought where it is cheaper for what it replaces", () => {
  const half = { ...SHEET, id: "half-sheet" };
  const need = needOf("a", revisionOf(5), {
    alternatives: [{ materialId: "half-sheet", factor: decimal(2) }],
  });
  const observations = [shelf, observation("9.50", { materialId: "half-sheet" })];
  const facts = factsOf({ requirements: [need], observations, materials: [SHEET, half] });
  const line = exposure(TODAY, facts).projects[0]?.lines[0];
  expect(line?.costToFinish?.amount.toFixed(2)).toBe("95.00");
  expect(line?.takes.map((take) => `${take.quantity} ${take.offer.materialId}`)).toEqual(["10 half-sheet"]);
});

test("needs that accept different alternatives are covered apart where that is better", () => {
  const half = { ...SHEET, id: "half-sheet" };
  const accepts = { alternatives: [{ materialId: "half-sheet", factor: decimal(2) }] };
  const requirements = [needOf("a", revisionOf(5), accepts), needOf("b", revisionOf(3))];
  const observations = [shelf, observation("9.50", { materialId: "half-sheet" })];
  const facts = factsOf({ requirements, observations, materials: [SHEET, half] });
  expect(
    exposure(TODAY, facts).projects[0]?.lines.map((line) => line.costToFinish?.amount.toFixed(2)),
  ).toEqual(["95.00", "60.00"]);
});
