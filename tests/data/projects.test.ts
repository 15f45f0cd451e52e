import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addProject, changeProject, project, projectsOf } from "../../lib/data/projects.ts";
import { money } from "../../lib/money/money.ts";
import { projectPatch } from "../../lib/projects/project-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, ownerScope, someProjectEntry } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;

test("a project comes back as entered, its budget in home currency, its status from its day", async () => {
  const id = v7();
  const from = plusDays(today, -40);
  const entry = someProjectEntry({ status: "planned", statusFrom: from, budget: "12345.67", note: "garage" });
  await accepted(addProject(scope, id, entry));
  expect(await project(scope, id)).toEqual({
    id,
    name: entry.name,
    note: "garage",
    budget: money("12345.67", "CAD"),
    statuses: [{ status: "planned", from }],
  });
});

test("a status without a day holds from today", async () => {
  const made = await accepted(addProject(scope, v7(), someProjectEntry()));
  expect(made.statuses).toEqual([{ status: "live", from: today }]);
});

test("statuses are dated: a new day adds one, the same day takes its place", async () => {
  const from = plusDays(today, -40);
  const made = await accepted(addProject(scope, v7(), someProjectEntry({ statusFrom: from })));
  const change = (status: string, statusFrom: string) =>
    changeProject(scope, made.id, projectPatch.parse({ status, statusFrom }));
  await accepted(change("finished", plusDays(today, -1)));
  await accepted(change("dropped", plusDays(today, -1)));
  const now = await accepted(change("planned", plusDays(today, -60)));
  expect(now.statuses).toEqual([
    { status: "planned", from: plusDays(today, -60) },
    { status: "live", from },
    { status: "dropped", from: plusDays(today, -1) },
  ]);
});

test("the same create again is repeated; other content is a conflict", async () => {
  const id = v7();
  const entry = someProjectEntry();
  await accepted(addProject(scope, id, entry));
  expect(await addProject(scope, id, entry)).toMatchObject({ ok: true, repeated: true });
  expect(await addProject(scope, id, { ...entry, note: "other" })).toMatchObject({ why: "conflict" });
});

test("a name is taken once, capitals aside, also by a change", async () => {
  const one = await accepted(addProject(scope, v7(), someProjectEntry()));
  const other = await accepted(addProject(scope, v7(), someProjectEntry()));
  const again = someProjectEntry({ name: one.name.toUpperCase() });
  expect(await faultsIn(addProject(scope, v7(), again))).toEqual(["name: name-taken"]);
  const patch = projectPatch.parse({ name: one.name });
  expect(await faultsIn(changeProject(scope, other.id, patch))).toEqual(["name: name-taken"]);
  await accepted(changeProject(scope, one.id, patch));
});

test("a patch changes what it names; a budget of null takes it away", async () => {
  const made = await accepted(addProject(scope, v7(), someProjectEntry({ budget: "10", note: "n" })));
  expect(await accepted(changeProject(scope, made.id, projectPatch.parse({ note: null })))).toMatchObject({
    note: null,
    budget: money("10", "CAD"),
  });
  const without = await accepted(changeProject(scope, made.id, projectPatch.parse({ budget: null })));
  expect(without.budget).toBeNull();
  expect(without.statuses).toEqual(made.statuses);
});

test("every project is listed, by name", async () => {
  const names = (await projectsOf(scope)).map(({ name }) => name.toLowerCase());
  expect(names.length).toBeGreaterThan(4);
  expect(names).toEqual([...names].sort());
});

test("a project that is not there is not there", async () => {
  expect(await project(scope, v7())).toBeNull();
  expect(await changeProject(scope, v7(), {})).toEqual({ ok: false, why: "not-there" });
});
