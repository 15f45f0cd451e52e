import { afterAll, beforeAll, expect, test } from "vitest";
import { mayDo } from "../../app/_gate/access.ts";
import { ACTIONS, type ActionName } from "../../app/_gate/actions-table.ts";
import { inWorkspace } from "../../lib/data/client.ts";
import { askForSignIn } from "../../lib/data/sessions.ts";
import { onConnection } from "../../lib/launch/postgres-connection.mjs";
import { builtActions, calledAction } from "../support/called-action.ts";
import { interfaceAt } from "../support/interface.ts";
import { someStore } from "../support/interface-things.ts";
import { shareSecret, signedInAs } from "../support/people-of-the-house.ts";
import { type Served, served } from "../support/served.ts";

let web: Served;
let url = "";
let reader = "";

beforeAll(async () => {
  shareSecret();
  web = await served();
  url = process.env.DATABASE_URL ?? "";
  await someStore(interfaceAt(() => web.address));
  reader = await signedInAs("reader");
});
afterAll(async () => {
  const { disconnectHouse } = await import("../../lib/data/house-client.ts");
  await disconnectHouse();
  await web.stop();
});

const changes = () =>
  onConnection(url, async (client) =>
    Number((await client.query("select count(*) as n from change")).rows[0].n),
  );

const isAction = (name: string): name is ActionName => name in ACTIONS;

/** Held back: the form again with the sentence why, or sent to where it says so. */
async function isHeldBack(response: Response): Promise<boolean> {
  const to = `${response.headers.get("x-action-redirect")} ${response.headers.get("location")}`;
  return (
    /\/sign-in(\/not-yours)?[; ]/.test(to) ||
    /does not let you do this|no longer signed in/.test(await response.text())
  );
}

test("every server action of the build is in the table", () => {
  const built = builtActions().map(({ name }) => name);
  expect(built.filter((name) => !isAction(name))).toEqual([]);
  expect(built.length).toBeGreaterThan(60);
});

test("a reader's every write is refused, the action called past its form", async () => {
  const before = await changes();
  const closed = builtActions().filter(({ name }) => isAction(name) && !mayDo("reader", name));
  const open: string[] = [];
  for (const action of closed)
    if (!(await isHeldBack(await calledAction(web.address, action, reader)))) open.push(action.name);
  expect(open).toEqual([]);
  expect(closed.length).toBeGreaterThan(60);
  expect(await changes()).toBe(before);
});

test("an owner's call of the same action is not held back", async () => {
  const owner = await signedInAs("owner");
  const action = builtActions().find(({ name }) => name === "addProjectForm");
  if (action === undefined) throw new Error("no such action");
  expect(await isHeldBack(await calledAction(web.address, action, owner))).toBe(false);
});

test("nobody's every action but those of the door is held back once sign-in is asked for", async () => {
  await askForSignIn(true);
  const open: string[] = [];
  for (const action of builtActions().filter(({ name }) => isAction(name) && !mayDo("nobody", name)))
    if (!(await isHeldBack(await calledAction(web.address, action, "")))) open.push(action.name);
  expect(open).toEqual([]);
  await askForSignIn(false);
});

test("were an action let through, a reader's scope could still not write: the database refuses", async () => {
  const { ownerWorkspace } = await import("../../lib/data/workspaces.ts");
  const { id: workspaceId } = await ownerWorkspace();
  const name = { data: { name: "Renamed by a reader" } };
  const scope = { workspaceId, actor: "A reader" };
  await expect(
    inWorkspace({ ...scope, readOnly: true }, (tx) => tx.workspace.updateMany(name)),
  ).rejects.toThrow(/read-only transaction/);
  const { count } = await inWorkspace(scope, (tx) => tx.workspace.updateMany(name));
  expect(count).toBe(1);
});
