import { describe, expect, test } from "vitest";
import { localDate } from "../../lib/calendar/local-date.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import type { ProjectExposure } from "../../lib/exposure/exposure-figures.ts";
import type { Money } from "../../lib/money/money.ts";
import { savings } from "../../lib/savings/savings.ts";
import { demoFacts } from "../support/demo-facts.ts";
import judged from "./demo-judge.json" with { type: "json" };

// The demo's figures for one day by another program (demo-judge.py: exact fractions, plain loops, no code of ours);
// printed to the cent, compared to the cent.
const DAY = localDate(judged.day);
const facts = demoFacts(DAY);
const cents = (value: Money | null) => value?.amount.toFixed(2) ?? null;
const called = (materialId: string) => facts.materials.get(materialId)?.name;

/** What is bought of an accepted alternative instead, as the judge says it. */
function standInsOf(project: ProjectExposure | undefined): string[] {
  return (project?.pools ?? []).flatMap(({ materialId, takes }) =>
    takes
      .filter(({ offer }) => offer.materialId !== materialId)
      .map(({ offer, quantity }) => `${quantity} ${called(offer.materialId)} for ${called(materialId)}`),
  );
}
const named = new Map(facts.projects.map((project) => [project.id, project.name]));

describe("the demo by another program: exposure", () => {
  const { projects } = exposure(DAY, facts);

  test("both speak of the same projects", () => {
    expect(projects.map(({ projectId }) => named.get(projectId)).sort()).toEqual(
      Object.keys(judged.projects).sort(),
    );
  });

  test.each(Object.entries(judged.projects))("%s", (name, theirs) => {
    const ours = projects.find(({ projectId }) => named.get(projectId) === name);
    expect({
      open: Object.fromEntries(
        ours?.lines.map((line) => [facts.materials.get(line.materialId)?.name, line.open.toFixed()]) ?? [],
      ),
      lockedCost: cents(ours?.totals.lockedCost ?? null),
      costToFinish: cents(ours?.totals.costToFinish ?? null),
      perOrderCharges: cents(ours?.totals.perOrderCharges ?? null),
      estimateAtCompletion: cents(ours?.totals.estimateAtCompletion ?? null),
      unpricedLines: ours?.totals.unpricedLines,
      standIns: standInsOf(ours),
    }).toEqual(theirs);
  });
});

describe("the demo by another program: what was drawn", () => {
  const drawn = savings(null, null, DAY, facts).rows.filter((row) => row.kind === "drawn");

  test("both speak of the same draws", () => {
    expect(drawn.map((row) => row.eventId).sort()).toEqual(Object.keys(judged.realised).sort());
  });

  test.each(Object.entries(judged.realised))("%s", (eventId, theirs) => {
    const ours = drawn.find((row) => row.eventId === eventId);
    expect({
      cost: cents(ours?.paid ?? null),
      carrying: cents(ours?.carrying ?? null),
      valueAtAcquisition: cents(ours?.goingAtAcquisition ?? null),
      valueAtDraw: cents(ours?.goingAtDraw ?? null),
      saving: cents(ours?.saving ?? null),
    }).toEqual(theirs);
  });
});
