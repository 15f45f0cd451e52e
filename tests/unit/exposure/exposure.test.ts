import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { day, fee, observation, SHEET, TODAY } from "../../support/price-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const of = (given: Parameters<typeof factsOf>[0], on = TODAY) => exposure(on, factsOf(given));
const shelf = observation("20.00");
const budgeted = (quantity: number) => revisionOf(quantity, { budgetUnitPrice: cad(25) });

describe("a project", () => {
  const lots = [lotOf(10, 150)];
  const events = [eventOf("allocated", 10, "2026-01-06", { requirementId: "a" })];
  const requirements = [needOf("a", budgeted(30))];

  test("is estimated at what is locked in plus what finishing costs", () => {
    expect(of({ requirements, lots, events, observations: [shelf] }).projects[0]?.totals).toMatchObject({
      lockedCost: cad(150),
      costToFinish: cad(400),
      estimateAtCompletion: cad(550),
    });
  });

  test("is under its budget by a positive variance", () => {
    expect(of({ requirements, lots, events, observations: [shelf] }).projects[0]?.totals).toMatchObject({
      budget: cad(750),
      variance: cad(200),
    });
  });

  test("is over its budget by a negative one", () => {
    const projects = [projectOf("job", { budget: cad(500) })];
    const found = of({ requirements, lots, events, observations: [shelf], projects });
    expect(found.projects[0]?.totals.variance).toEqual(cad(-50));
  });

  test("is so much ahead in what is set aside, as its lines together", () => {
    const found = of({ requirements, lots, events, observations: [shelf] });
    expect(found.projects[0]?.totals.unrealisedSaving).toEqual(cad(50));
    expect(of({ requirements, lots, events }).totals.unrealisedSaving).toBe(null);
  });

  test("swings by a tenth of what finishing costs when every price moves ten per cent: what is locked in does not", () => {
    expect(of({ requirements, lots, events, observations: [shelf] }).projects[0]?.totals.tenPercent).toEqual(
      cad(40),
    );
  });

  test("with a line that has no price is incomplete: at least so much, and no variance", () => {
    const more = [...requirements, needOf("b", budgeted(1), { materialId: "board" })];
    const materials = [SHEET, { ...SHEET, id: "board" }];
    expect(
      of({ requirements: more, lots, events, observations: [shelf], materials }).projects[0]?.totals,
    ).toMatchObject({
      costToFinish: cad(400),
      unpricedLines: 1,
      complete: false,
      budget: cad(775),
      variance: null,
    });
  });

  test("with a lot whose cost cannot be said is incomplete", () => {
    const unknown = [lotOf(10, 150, { storeId: null })];
    expect(
      of({ requirements, lots: unknown, events, observations: [shelf] }).projects[0]?.totals,
    ).toMatchObject({
      unpricedLines: 0,
      complete: false,
      variance: null,
    });
  });

  test("before its first day is not there", () => {
    expect(of({ requirements }, day("2025-12-31")).projects).toEqual([]);
  });
});

describe("charges per order", () => {
  const delivered = (amount: string, materialId: string, storeId = "near") =>
    observation(amount, {
      materialId,
      storeId,
      fees: [fee("delivery", { amount: decimal(85), basis: "order", freeFrom: decimal(1000) })],
    });
  const board = { ...SHEET, id: "board" };
  const materials = [SHEET, board];
  const observations = [delivered("20.00", "sheet"), delivered("8.00", "board")];
  const both = (projectId: string) => [
    needOf(`${projectId} sheets`, revisionOf(10), { projectId }),
    needOf(`${projectId} boards`, revisionOf(10), { projectId, materialId: "board" }),
  ];

  test("are added once for a store and project, not once for each line", () => {
    expect(of({ requirements: both("job"), observations, materials }).projects[0]?.totals).toMatchObject({
      costToFinish: cad(280),
      perOrderCharges: cad(85),
      estimateAtCompletion: cad(365),
    });
  });

  test("are added for each project, which orders by itself", () => {
    const projects = [projectOf("job"), projectOf("other")];
    const requirements = [...both("job"), ...both("other")];
    expect(of({ requirements, observations, materials, projects }).totals.perOrderCharges).toEqual(cad(170));
  });

  test("are added for each store ordered from", () => {
    const apart = [delivered("20.00", "sheet"), delivered("8.00", "board", "far")];
    expect(of({ requirements: both("job"), observations: apart, materials }).totals.perOrderCharges).toEqual(
      cad(170),
    );
  });

  test("are waived when the whole order of a project reaches what it is free from", () => {
    const requirements = [needOf("a", revisionOf(40)), needOf("b", revisionOf(25), { materialId: "board" })];
    expect(of({ requirements, observations, materials }).totals.perOrderCharges).toEqual(cad(0));
  });

  test("do not swing with the market", () => {
    expect(of({ requirements: both("job"), observations, materials }).totals.tenPercent).toEqual(cad(28));
  });
});

describe("the whole workspace", () => {
  const projects = [
    projectOf("live", { budget: cad(900) }),
    projectOf("planned", { statuses: [{ status: "planned", from: day("2026-01-01") }] }),
    projectOf("finished", { statuses: [{ status: "finished", from: day("2026-01-01") }] }),
  ];
  const requirements = projects.map(({ id }) => needOf(`for ${id}`, revisionOf(10), { projectId: id }));

  test("answers for every project", () => {
    expect(of({ projects, requirements, observations: [shelf] }).projects).toHaveLength(3);
  });

  test("adds up the live ones only", () => {
    expect(of({ projects, requirements, observations: [shelf] }).totals).toMatchObject({
      costToFinish: cad(200),
      budget: cad(900),
      variance: cad(700),
    });
  });

  test("is a sum of projects: its swing is the sum of theirs", () => {
    const twice = [projectOf("job"), projectOf("other")];
    const needs = twice.map(({ id }) => needOf(id, revisionOf(1), { projectId: id }));
    const found = of({ projects: twice, requirements: needs, observations: [observation("0.35")] });
    expect(found.totals.tenPercent).toEqual(cad("0.08"));
  });

  test("has no budget where a live project has none", () => {
    const some = [projectOf("job"), projectOf("other", { budget: cad(5) })];
    expect(of({ projects: some }).totals).toMatchObject({ budget: null, variance: null });
  });

  test("with nothing live is nothing, and complete", () => {
    expect(of({ projects: [] }).totals).toMatchObject({ costToFinish: cad(0), budget: null, complete: true });
  });
});

test("as of an earlier day the figures are that day's: its offers, its requirement, its stock", () => {
  const early = day("2026-02-01");
  const requirements = [needOf("a", [revisionOf(10), revisionOf(16, { validFrom: day("2026-02-15") })])];
  const observations = [observation("30.00", { seenOn: day("2026-01-20") }), shelf];
  const lots = [lotOf(4, 40)];
  const events = [eventOf("allocated", 4, "2026-02-20", { requirementId: "a" })];
  const found = exposure(early, factsOf({ requirements, observations, lots, events }));
  expect(found.totals).toMatchObject({ lockedCost: cad(0), costToFinish: cad(300) });
  expect(of({ requirements, observations, lots, events }).totals).toMatchObject({
    lockedCost: cad(40),
    costToFinish: cad(240),
  });
});
