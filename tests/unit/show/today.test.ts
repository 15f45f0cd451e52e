import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { jobsStillBuying, neededWithin, pressing } from "../../../lib/show/today.ts";
import { cad, exposureOf, line, offer, take } from "../../support/exposure-example.ts";

const lapsing = offer({ observationId: "special", terms: "special", lapsesOn: localDate("2026-03-07") });

test("an offer that lapses this week with money on it presses most", () => {
  const exposure = exposureOf([line({ takes: [take("31", lapsing)] })]);
  expect(pressing(exposure, "en-CA")).toEqual({
    kind: "lapsing",
    materialId: "plywood",
    storeId: "mill-road",
    on: "2026-03-07",
    money: "1,058.65",
    daysLeft: 5,
  });
});

test("money on one offer is summed over the jobs that lean on it", () => {
  const exposure = exposureOf([
    line({ takes: [take("10", lapsing)] }),
    line({ requirementId: "other", projectId: "kitchen", takes: [take("2", lapsing)] }),
  ]);
  // 12 x 34.15
  expect(pressing(exposure, "en-CA")).toMatchObject({ kind: "lapsing", money: "409.80" });
});

test("a need that comes before the lapse presses more", () => {
  const exposure = exposureOf([line({ neededBy: localDate("2026-03-05"), takes: [take("31", lapsing)] })]);
  expect(pressing(exposure, "en-CA")).toMatchObject({ kind: "needed", need: { daysLeft: 3, open: "31" } });
});

test("a need that is overdue still presses", () => {
  const exposure = exposureOf([line({ neededBy: localDate("2026-02-20") })]);
  expect(pressing(exposure, "en-CA")).toMatchObject({ kind: "needed", need: { daysLeft: -10 } });
});

test("with nothing near, money on stale prices presses", () => {
  const stale = offer({ ageDays: 41, stale: true });
  const exposure = exposureOf([line({ takes: [take("31", stale)] })], { restsOnStale: cad("1058.65") });
  expect(pressing(exposure, "en-CA")).toEqual({ kind: "stale", money: "1,058.65", prices: 1 });
});

test("lines without a price press when nothing else does", () => {
  const exposure = exposureOf([line({ takes: [], costToFinish: null })], { unpricedLines: 1 });
  expect(pressing(exposure, "en-CA")).toEqual({ kind: "unpriced", lines: 1 });
});

test("fresh prices and a far day press nothing", () => {
  expect(pressing(exposureOf([line()]), "en-CA")).toEqual({ kind: "none" });
});

test("a job that is covered is not counted as still buying", () => {
  const exposure = exposureOf([line(), line({ projectId: "kitchen", open: decimal(0), takes: [] })]);
  expect(jobsStillBuying(exposure)).toBe(1);
});

test("needed-by dates are listed when open and near, the earliest first", () => {
  const exposure = exposureOf([
    line({ requirementId: "far" }),
    line({ requirementId: "april", neededBy: localDate("2026-04-16") }),
    line({ requirementId: "march", neededBy: localDate("2026-03-20") }),
    line({ requirementId: "covered", neededBy: localDate("2026-03-04"), open: decimal(0) }),
  ]);
  expect(neededWithin(exposure, "en-CA").map((need) => need.requirementId)).toEqual(["march", "april"]);
});
