import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Observation } from "../../../lib/prices/observation.ts";
import { day, observation, TODAY } from "../../support/price-example.ts";
import { factsOf, needOf, revisionOf } from "../../support/stock-example.ts";

const until = (last: string) => ({ terms: "special", until: day(last) }) as const;

function lines(observations: readonly Observation[], ...neededBy: string[]) {
  const requirements = neededBy.map((last, index) =>
    needOf(`need-${index}`, revisionOf(10, { neededBy: day(last) })),
  );
  return exposure(TODAY, factsOf({ requirements, observations })).projects[0]?.lines.map((line) => ({
    cost: line.costToFinish?.amount.toFixed(2),
    rests: line.restsOnLapsing.amount.toFixed(2),
    without: line.costWithoutLapsing?.amount.toFixed(2) ?? null,
  }));
}

describe("an offer that lapses", () => {
  const special = observation("15.00", until("2026-03-10"));
  const shelf = observation("20.00");

  test("before the needed-by day is said, with the cost without it", () => {
    expect(lines([special, shelf], "2026-06-01")).toEqual([
      { cost: "150.00", rests: "150.00", without: "200.00" },
    ]);
  });

  test("on the needed-by day itself still holds", () => {
    expect(lines([special, shelf], "2026-03-10")).toEqual([
      { cost: "150.00", rests: "0.00", without: "150.00" },
    ]);
  });

  test("lapses for the job that needs it later and not for the one that needs it sooner", () => {
    expect(lines([special, shelf], "2026-03-09", "2026-06-01")).toEqual([
      { cost: "150.00", rests: "0.00", without: "150.00" },
      { cost: "150.00", rests: "150.00", without: "200.00" },
    ]);
  });

  test("with nothing to take its place leaves no cost without it", () => {
    expect(lines([special], "2026-06-01")).toEqual([{ cost: "150.00", rests: "150.00", without: null }]);
  });

  test("beside a limited one that does not, is counted for its own part", () => {
    const six = observation("12.00", {
      terms: "clearance",
      maxQuantity: decimal(6),
      until: day("2026-12-31"),
    });
    expect(lines([six, special, shelf], "2026-06-01")).toEqual([
      { cost: "132.00", rests: "60.00", without: "152.00" },
    ]);
  });
});

test("takes are shared by quantity, and add up to what is bought", () => {
  const requirements = [needOf("a", revisionOf(10)), needOf("b", revisionOf(5))];
  const facts = factsOf({ requirements, observations: [observation("20.00")] });
  const taken = exposure(TODAY, facts).projects[0]?.lines.map((line) => line.takes[0]?.quantity.toFixed());
  expect(taken).toEqual(["10", "5"]);
});

test("the best unit price is what each costs of what is covered, unrounded", () => {
  const observations = [observation("20.00", { per: { quantity: decimal(3), unit: "sheet" } })];
  const facts = factsOf({ requirements: [needOf("a", revisionOf(38))], observations });
  const line = exposure(TODAY, facts).projects[0]?.lines[0];
  expect([line?.costToFinish?.amount.toFixed(2), line?.bestUnitPrice?.amount.toFixed(4)]).toEqual([
    "253.33",
    "6.6666",
  ]);
});
