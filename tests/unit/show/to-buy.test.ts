import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import type { PoolToBuy, ProjectExposure } from "../../../lib/exposure/exposure-figures.ts";
import { restsText, toBuy } from "../../../lib/show/to-buy.ts";
import { cad, DAY, line, offer, take, totals } from "../../support/exposure-example.ts";

const special = offer({ observationId: "special", terms: "special", lapsesOn: localDate("2026-03-07") });

function pool(given: Partial<PoolToBuy> = {}): PoolToBuy {
  return {
    materialId: "plywood",
    unit: "sheet",
    requirementIds: ["need-1"],
    quantity: decimal(31),
    takes: [take("31")],
    cost: cad("1058.65"),
    over: decimal(0),
    uncovered: decimal(0),
    ...given,
  };
}

function project(given: Partial<ProjectExposure> = {}): ProjectExposure {
  return {
    projectId: "workshop",
    lines: [line()],
    pools: [],
    orderCharges: [],
    totals: totals(),
    ...given,
  };
}

test("what lapses first stands on top of what to buy, what holds until a newer price below", () => {
  const rows = toBuy(
    project({ pools: [pool({ takes: [take("20"), take("11", special)] })] }),
    [],
    DAY,
    "en-CA",
  );
  // 11 x 34.15, 20 x 34.15
  expect(rows.map(({ quantity, cost, daysLeft }) => [quantity, cost, daysLeft])).toEqual([
    ["11", "375.65", 5],
    ["20", "683.00", null],
  ]);
});

test("what is bought beyond the need is said once", () => {
  const rows = toBuy(
    project({ pools: [pool({ over: decimal(2), takes: [take("20"), take("13", special)] })] }),
    [],
    DAY,
    "en-CA",
  );
  expect(rows.map(({ over }) => over).filter((over) => over !== null)).toEqual(["2"]);
});

test("money that rests on stale or lapsing offers is said, and nothing where there is none", () => {
  const some = totals({ restsOnStale: cad("12.30") });
  expect(restsText(project({ totals: some }), "en-CA")).toEqual({
    stale: "12.30",
    lapsing: null,
    withoutLapsing: null,
  });
});

test("what finishing costs more without the offers that lapse is the sum over the lines that rest on them", () => {
  const resting = { restsOnLapsing: cad("100"), costToFinish: cad("100") };
  const lines = [
    line({ ...resting, costWithoutLapsing: cad("112.50") }),
    line({ ...resting, costWithoutLapsing: cad("101.25") }),
    line({ costWithoutLapsing: null }),
  ];
  const rests = restsText(project({ lines, totals: totals({ restsOnLapsing: cad("200") }) }), "en-CA");
  // 12.50 + 1.25
  expect(rests).toMatchObject({ lapsing: "200.00", withoutLapsing: "13.75" });
});

test("where something is then not covered at all, how much more it costs is not known", () => {
  const lines = [line({ restsOnLapsing: cad("100"), costWithoutLapsing: null })];
  const rests = restsText(project({ lines, totals: totals({ restsOnLapsing: cad("100") }) }), "en-CA");
  expect(rests).toMatchObject({ lapsing: "100.00", withoutLapsing: null });
});
