import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import { apiExposure, exposureShape } from "../../../lib/show/api-exposure.ts";
import { apiLot, apiStockEvent, lotShape, stockEventShape } from "../../../lib/show/api-lot.ts";
import { apiProject, apiRequirement, projectShape, requirementShape } from "../../../lib/show/api-project.ts";
import { apiWorkspace, workspaceShape } from "../../../lib/show/api-settings.ts";
import { cad, DAY, exposureOf, line } from "../../support/exposure-example.ts";
import { day } from "../../support/price-example.ts";
import { eventOf, lotOf } from "../../support/stock-example.ts";

describe("an exposure in an answer", () => {
  const [project] = exposureOf(
    [line(), line({ requirementId: "need-2", unpriced: true, costToFinish: null, bestUnitPrice: null })],
    { variance: null, complete: false, unpricedLines: 1 },
  ).projects;

  test("keeps what is not known as null", () => {
    if (project === undefined) throw new Error("the example has a project");
    const answer = exposureShape.parse(apiExposure(project, DAY));
    expect(answer.requirements.map(({ costToFinish }) => costToFinish)).toEqual(["1058.65", null]);
    expect(answer.requirements[1]).toMatchObject({ bestOffer: null, unpriced: true });
    expect(answer.totals).toMatchObject({ variance: null, complete: false, tenPercent: "105.87" });
  });
});

describe("a lot in an answer", () => {
  const lot = lotOf(10, 200);

  test("says where its quantity is on the day asked for", () => {
    const drawn = eventOf("drawn", 3, "2026-01-10", { requirementId: "a" });
    const answer = lotShape.parse(apiLot(lot, [drawn], day("2026-01-10")));
    expect(answer.state).toMatchObject({ free: "7", drawn: [{ requirementId: "a", quantity: "3" }] });
    expect(apiLot(lot, [drawn], day("2026-01-09")).state).toMatchObject({ free: "10", drawn: [] });
    expect(answer.deletedAt).toBeNull();
  });

  test("taken out of the books says since when", () => {
    const deletedAt = "2026-01-11T10:00:00.123456+00:00";
    const answer = lotShape.parse(apiLot({ ...lot, deletedAt }, [], day("2026-01-12")));
    expect(answer.deletedAt).toBe(deletedAt);
  });

  test("has events whose money has the places of its currency", () => {
    const sold = eventOf("sold", 1, "2026-01-10", { amount: money("20.5", "CAD") });
    expect(stockEventShape.parse(apiStockEvent(sold))).toMatchObject({
      kind: "sold",
      quantity: "1",
      amount: "20.50",
      currency: "CAD",
      undoneAt: null,
    });
  });
});

describe("a project in an answer", () => {
  const project = {
    id: "job",
    name: "Heron Lane workshop",
    budget: cad("2000"),
    note: null,
    statuses: [
      { status: "planned", from: day("2026-01-01") },
      { status: "live", from: day("2026-02-01") },
    ],
  } as const;

  test("has the status of the day, and none before its first", () => {
    const on = (text: string) => projectShape.parse(apiProject(project, day(text))).status;
    expect([on("2025-12-31"), on("2026-01-31"), on("2026-02-01")]).toEqual([null, "planned", "live"]);
  });

  test("has requirements that ask as on the day, beside all their revisions", () => {
    const revision = (validFrom: string, quantity: number) => ({
      validFrom: day(validFrom),
      quantity: decimal(quantity),
      unit: "sheet" as const,
      wastePercent: decimal(10),
      neededBy: day("2026-06-14"),
      budgetUnitPrice: null,
      acceptsUsed: false,
    });
    const requirement = {
      id: "need",
      projectId: "job",
      materialId: "plywood",
      revisions: [revision("2026-01-01", 10), revision("2026-02-01", 12)],
      alternatives: [{ materialId: "osb", factor: decimal("1.05") }],
      closedOn: null,
    };
    const on = (text: string) => requirementShape.parse(apiRequirement(requirement, day(text)));
    expect([on("2026-01-31").quantity, on("2026-02-01").quantity]).toEqual(["10", "12"]);
    expect(on("2025-12-31").quantity).toBeUndefined();
    expect(on("2025-12-31").revisions).toHaveLength(2);
    expect(on("2026-02-01").alternatives).toEqual([{ materialId: "osb", factor: "1.05" }]);
  });
});

test("the workspace's money rate in an answer is the one of today", () => {
  const settings = {
    id: "own",
    name: "My workspace",
    homeCurrency: "CAD",
    taxRegion: "CA-NS",
    registrations: [],
    moneyRates: [
      { percent: decimal("6"), from: null },
      { percent: decimal("7.25"), from: day("2026-02-01") },
    ],
    recheckDays: 30,
    timeZone: "America/Halifax",
    rateSources: {},
  } as const;
  const on = (text: string) => workspaceShape.parse(apiWorkspace(settings, day(text))).moneyRate;
  expect([on("2026-01-31"), on("2026-02-01")]).toEqual(["6", "7.25"]);
});
