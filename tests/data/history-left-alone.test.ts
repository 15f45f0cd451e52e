import { expect, inject, test } from "vitest";
import { type Ask, type AskedOf, candidateIds } from "../../lib/data/candidates-query.ts";
import { inWorkspace } from "../../lib/data/client.ts";
import { exposureFacts, savingsFacts } from "../../lib/data/facts.ts";
import { Prisma } from "../../lib/data/generated/client.ts";
import { historyOf } from "../../lib/data/observations.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { filledDatabase } from "../bench/fill.ts";
import { MEDIUM } from "../bench/sizes.ts";
import { ownerScope } from "../support/stored-things.ts";
import { plain } from "../support/whole-history.ts";

// 100,000 prices of three years. Not how long it takes, but how much of the history is touched.
await filledDatabase(inject("template").serverUrl, { ...MEDIUM, lots: 500 });
const scope = await ownerScope();
const { today } = scope;

type Plan = Readonly<{
  "Node Type": string;
  "Relation Name"?: string;
  "Actual Rows": number;
  "Actual Loops": number;
  "Rows Removed by Filter"?: number;
  Plans?: readonly Plan[];
}>;

function steps(plan: Plan): Plan[] {
  return [plan, ...(plan.Plans ?? []).flatMap(steps)];
}

/** Rows of the observations that a query looked at, kept or not, and whether it read the whole table. */
async function touched(asks: readonly Ask[], asked: AskedOf): Promise<{ rows: number; whole: boolean }> {
  const query = Prisma.sql`EXPLAIN (ANALYZE, FORMAT JSON) ${candidateIds(asks, asked)}`;
  const [answer] = await inWorkspace(scope, (tx) =>
    tx.$queryRaw<{ "QUERY PLAN": [{ Plan: Plan }] }[]>(query),
  );
  const read = steps(answer?.["QUERY PLAN"][0].Plan as Plan).filter(
    (step) => step["Relation Name"] === "observation",
  );
  expect(read.length).toBeGreaterThan(0);
  return {
    rows: read.reduce(
      (sum, step) =>
        sum + (step["Actual Rows"] + (step["Rows Removed by Filter"] ?? 0)) * step["Actual Loops"],
      0,
    ),
    whole: read.some((step) => step["Node Type"] === "Seq Scan"),
  };
}

test("exposure of everything touches less than a third of the history, one project's less than a hundredth", async () => {
  const facts = await exposureFacts(scope, today);
  const asked = { valuation: facts.valuation, knownOn: today, every: false };
  const asks = (ids: Iterable<string>) => [...ids].map((materialId) => ({ materialId, day: today }));
  const all = await touched(asks(facts.materials.keys()), asked);
  expect(all.whole).toBe(false);
  expect(all.rows).toBeLessThan(MEDIUM.prices / 3);
  const [project] = facts.projects;
  const own = await exposureFacts(scope, today, project?.id);
  const one = await touched(asks(own.materials.keys()), asked);
  expect(one.whole).toBe(false);
  expect(one.rows).toBeLessThan(MEDIUM.prices / 100);
});

test("few of them travel", async () => {
  const facts = await exposureFacts(scope, today);
  expect(facts.observations.length).toBeLessThan(MEDIUM.prices / 20);
  const [project] = facts.projects;
  expect((await exposureFacts(scope, today, project?.id)).observations.length).toBeLessThan(
    MEDIUM.prices / 200,
  );
  expect((await savingsFacts(scope, null, today)).observations.length).toBeLessThan(MEDIUM.prices / 5);
});

test("and they give the figures that the whole history gives", async () => {
  const projectId = (await exposureFacts(scope, today)).projects[7]?.id;
  const facts = await exposureFacts(scope, today, projectId);
  const history: Observation[] = [];
  for (const id of facts.materials.keys()) history.push(...(await historyOf(scope, id, today)));
  expect(history.length).toBeGreaterThan(facts.observations.length * 5);
  expect(plain(exposure(today, facts))).toEqual(plain(exposure(today, { ...facts, observations: history })));
  expect(exposure(today, facts).totals.costToFinish.amount.greaterThan(0)).toBe(true);
});
