import { beforeAll, expect, test } from "vitest";
import { localDate, plusDays } from "../../lib/calendar/local-date.ts";
import { projectBasket, usualBase } from "../../lib/exposure/basket.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { freshDatabase } from "../support/database.ts";
import { plain, wholeHistory, withHistory } from "../support/whole-history.ts";

await freshDatabase();
const { basketFacts } = await import("../../lib/data/basket-facts.ts");
const { exposureFacts } = await import("../../lib/data/facts.ts");
const { deleteObservation } = await import("../../lib/data/observations.ts");
const { ownerWorkspace } = await import("../../lib/data/workspaces.ts");
const { loadDemo } = await import("../../prisma/demo/load.ts");

const TODAY = localDate("2026-06-30");
let scope = { workspaceId: "", actor: "test" };
let history: Observation[] = [];

beforeAll(async () => {
  scope = { ...(await loadDemo(TODAY)), actor: "test" };
  history = await wholeHistory(scope, TODAY);
});

test.each([0, 45, 200])(
  "%i days ago, the basket of every project is the same from its own facts as from the whole history",
  async (ago) => {
    const day = plusDays(TODAY, -ago);
    const all = await exposureFacts(scope, day);
    const baskets = [];
    for (const project of all.projects) {
      const own = await basketFacts(scope, project.id, day);
      if (own === null) throw new Error(`${project.name} is not there`);
      const base = usualBase(project, day);
      const basket = projectBasket(project.id, day, base, own);
      const whole = projectBasket(project.id, day, base, {
        ...withHistory(all, history, day),
        valuation: own.valuation,
      });
      expect(plain(basket)).toEqual(plain(whole));
      baskets.push(basket);
    }
    expect(baskets.some((basket) => basket?.now.known)).toBe(true);
  },
);

test("only shelf prices of the project's materials come along, none seen after the day", async () => {
  const day = plusDays(TODAY, -60);
  const [project] = (await exposureFacts(scope, day)).projects;
  const facts = await basketFacts(scope, project?.id ?? "", day);
  expect(facts?.projects.map(({ id }) => id)).toEqual([project?.id]);
  expect(facts?.observations.length).toBeGreaterThan(0);
  for (const seen of facts?.observations ?? []) {
    expect([seen.terms, facts?.materials.has(seen.materialId), seen.seenOn <= day]).toEqual([
      "shelf",
      true,
      true,
    ]);
  }
});

test("a price that was deleted counts on no day", async () => {
  const [project] = (await exposureFacts(scope, TODAY)).projects;
  const before = await basketFacts(scope, project?.id ?? "", TODAY);
  const gone = before?.observations.at(-1)?.id ?? "";
  await deleteObservation(scope, gone);
  const after = await basketFacts(scope, project?.id ?? "", TODAY);
  expect(after?.observations.map(({ id }) => id)).toEqual(
    before?.observations.map(({ id }) => id).filter((id) => id !== gone),
  );
});

test("a project of another workspace is not there", async () => {
  const [project] = (await exposureFacts(scope, TODAY)).projects;
  const owner = { workspaceId: (await ownerWorkspace()).id, actor: "test" };
  expect(await basketFacts(owner, project?.id ?? "", TODAY)).toBeNull();
});
