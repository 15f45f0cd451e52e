import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { needsOf } from "../../../lib/show/needs-of.ts";
import { withStatus } from "../../../lib/show/today.ts";
import { day, TODAY } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const planned = { statuses: [{ status: "planned" as const, from: day("2026-01-01") }] };
const finished = { statuses: [{ status: "finished" as const, from: day("2026-01-01") }] };
const facts = factsOf({
  projects: [projectOf("job"), projectOf("plan", planned), projectOf("past", finished)],
  requirements: [
    needOf("covered", revisionOf(2, { neededBy: day("2026-04-01") })),
    needOf("late", revisionOf(10, { neededBy: day("2026-09-01") }), {
      alternatives: [{ materialId: "other", factor: decimal(2) }],
    }),
    needOf("soon", revisionOf(5), { projectId: "plan" }),
    needOf("over", revisionOf(5), { projectId: "past" }),
  ],
  lots: [lotOf(2, 40)],
  events: [eventOf("allocated", 2, "2026-01-06", { requirementId: "covered" })],
});
const figures = exposure(TODAY, facts);

test("open needs of planned and live projects come first, by their day; those of finished ones are left out", () => {
  const needs = needsOf(figures, facts, "en-CA");
  expect(needs.map(({ requirementId, open }) => [requirementId, open.text])).toEqual([
    ["soon", "5"],
    ["late", "10"],
    ["covered", "0"],
  ]);
});

test("what may stand in for the material can be set aside for the need too", () => {
  const late = needsOf(figures, facts, "en-CA").find((need) => need.requirementId === "late");
  expect(late?.materialIds).toEqual(["sheet", "other"]);
});

test("projects are told apart by their status of the day", () => {
  const of = (...statuses: ("live" | "planned" | "finished")[]) =>
    withStatus(figures, facts, statuses).projects.map(({ projectId }) => projectId);
  expect([of("live"), of("planned"), of("live", "finished")]).toEqual([["job"], ["plan"], ["job", "past"]]);
});
