import pg from "pg";
import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { depositEventEntry } from "../../lib/bills/deposit-event-entry.ts";
import { addAskingPrice } from "../../lib/data/asking-prices.ts";
import { addDepositEvent } from "../../lib/data/bill-deposits.ts";
import { addBill } from "../../lib/data/bills.ts";
import { aboutDatabase, findingWorkspaces, inWorkspace } from "../../lib/data/client.ts";
import { addDisposal } from "../../lib/data/disposals.ts";
import { addLot } from "../../lib/data/lots.ts";
import { addObservation, correctObservation } from "../../lib/data/observations.ts";
import { tellAtOrBelow } from "../../lib/data/reminder-wishes.ts";
import { addRequirement } from "../../lib/data/requirements.ts";
import { addSalvage } from "../../lib/data/salvage.ts";
import { addStore } from "../../lib/data/stores.ts";
import { addTakeoff } from "../../lib/data/takeoffs.ts";
import { saveTaxRegion } from "../../lib/data/tax-regions.ts";
import { decimal } from "../../lib/decimal.ts";
import { disposalEntry } from "../../lib/projects/disposal-entry.ts";
import { askingPriceEntry } from "../../lib/stock/asking-price-entry.ts";
import { salvageEntry } from "../../lib/stock/salvage-entry.ts";
import { taxRegionEntry } from "../../lib/tax/tax-region-entry.ts";
import { ALL_REFERENCES } from "../support/all-references.ts";
import { freshDatabase } from "../support/database.ts";
import { storedIndex } from "../support/stored-index.ts";
import {
  accepted,
  otherScope,
  ownerScope,
  someBillEntry,
  someLotEntry,
  someObservationEntry,
  someRequirementEntry,
  someStoreEntry,
  someTakeoffEntry,
  storedJob,
} from "../support/stored-things.ts";

// What the database itself holds to, past lib/data.
const url = await freshDatabase();
const mine = await ownerScope();
const { today } = mine;
const theirs = { ...(await otherScope()), today };

/** A row in every table that refers to another. */
async function storedThings(scope: typeof mine) {
  const tax = { name: "Tax", ratePercent: "5", from: "2020-01-01" };
  await accepted(saveTaxRegion(scope, taxRegionEntry.parse({ code: "ZZ", components: [tax] })));
  const lists = { discounts: [{ percent: "5" }], importCharges: [{ name: "Duty", percent: "3" }] };
  const store = await accepted(addStore(scope, v7(), someStoreEntry(lists)));
  const job = await storedJob(scope);
  const other = await storedJob(scope);
  const alternatives = [{ materialId: other.material.id, factor: "1" }];
  const line = someRequirementEntry(job.material.id, today, { alternatives });
  const requirement = await accepted(addRequirement(scope, job.project.id, v7(), line));
  const seen = someObservationEntry(job.material.id, store.id, today);
  const observed = await accepted(addObservation(scope, v7(), seen));
  await accepted(correctObservation(scope, observed.id, { amount: decimal("2") }, "misread"));
  const payments = [{ amount: "10", on: today }];
  const bought = someLotEntry(job.material.id, today, {
    paid: null,
    observationId: observed.id,
    payments,
    storedAt: "Shed",
  });
  const lot = await accepted(addLot(scope, v7(), bought, { allocateTo: requirement.id }));
  const deposits = [{ name: "Pallet", amount: "25" }];
  const bill = await accepted(
    addBill(scope, v7(), someBillEntry(job.material.id, job.store.id, today, { deposits })),
  );
  const forfeited = depositEventEntry.parse({ deposit: 0, kind: "forfeited", amount: "5", on: today });
  await accepted(addDepositEvent(scope, bill.id, v7(), forfeited));
  const got = { projectId: job.project.id, quantity: "2", currency: "CAD", condition: "0.5", on: today };
  const salvaged = salvageEntry.parse({ materialId: job.material.id, ...got });
  await accepted(addSalvage(scope, v7(), salvaged));
  const asked = askingPriceEntry.parse({ amount: "4", currency: "CAD", since: today });
  await accepted(addAskingPrice(scope, lot.id, v7(), asked));
  await accepted(tellAtOrBelow(scope, job.material.id, { amount: decimal("40") }));
  const paidFor = { kind: "mixed", on: today, feeBasis: "flat", fee: "20", currency: "CAD" };
  const waste = disposalEntry.parse({ ...paidFor, materialId: job.material.id, quantity: "1" });
  await accepted(addDisposal(scope, job.project.id, v7(), waste));
  const [event] = await inWorkspace(scope, (tx) => tx.stockEvent.findMany({ select: { id: true }, take: 1 }));
  const takeoff = await accepted(
    addTakeoff(scope, job.project.id, v7(), someTakeoffEntry(job.material.id, today)),
  );
  const act = v7();
  const counted = { id: act, kind: "counted", onDay: new Date(today), entryHash: "" };
  await inWorkspace(scope, (tx) => tx.stockAct.create({ data: counted, select: { id: true } }));
  const index = await storedIndex(scope, job.material.id);
  const [region] = await inWorkspace(scope, (tx) => tx.taxRegion.findMany({ select: { id: true } }));
  return {
    ...job,
    store,
    requirement,
    observed,
    lot,
    bill,
    event,
    takeoff,
    act,
    index,
    region: region?.id ?? "",
  };
}
let things: Awaited<ReturnType<typeof storedThings>>;

beforeAll(async () => {
  things = await storedThings(mine);
  await storedThings(theirs);
});

/** A session as the program's role, but past lib/data. */
async function asProgram<T>(workspace: string | null, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("BEGIN");
    if (process.env.DUNNAGE_ROLE) await client.query(`SET LOCAL ROLE ${process.env.DUNNAGE_ROLE}`);
    if (workspace !== null) await client.query("SELECT set_config('app.workspace', $1, true)", [workspace]);
    return await work(client);
  } finally {
    await client.end();
  }
}

async function tables(): Promise<string[]> {
  const found = await aboutDatabase(
    (client) => client.$queryRaw<
      { name: string }[]
    >`SELECT c.table_name AS name FROM information_schema.columns c
      WHERE c.table_schema = current_schema() AND c.column_name = 'workspace_id' ORDER BY 1`,
  );
  return found.map(({ name }) => name);
}

test("every table but the migrations' own is bound by a policy, its owner too", async () => {
  const unbound = await aboutDatabase(
    (client) => client.$queryRaw<{ name: string }[]>`SELECT relname AS name FROM pg_class
      WHERE relnamespace = current_schema()::regnamespace AND relkind = 'r' AND NOT (relrowsecurity AND relforcerowsecurity)`,
  );
  expect(unbound).toEqual([{ name: "_prisma_migrations" }]);
  expect((await tables()).length).toBeGreaterThan(20);
});

test("without a workspace the program sees nothing, in any table", async () => {
  for (const table of [...(await tables()), "workspace"])
    expect(await asProgram(null, (client) => client.query(`SELECT * FROM ${table}`))).toMatchObject({
      rowCount: 0,
    });
  const written = asProgram(null, (client) =>
    client.query("INSERT INTO rate_source (currency, source) VALUES ('USD', 'x')"),
  );
  await expect(written).rejects.toThrow();
});

test("in a workspace it sees that one's rows only, and cannot write into another", async () => {
  for (const table of await tables()) {
    const { rows } = await asProgram(theirs.workspaceId, (client) =>
      client.query(`SELECT DISTINCT workspace_id FROM ${table}`),
    );
    for (const row of rows) expect(row.workspace_id).toBe(theirs.workspaceId);
  }
  const into = asProgram(theirs.workspaceId, (client) =>
    client.query("INSERT INTO rate_source (workspace_id, currency, source) VALUES ($1, 'USD', 'x')", [
      mine.workspaceId,
    ]),
  );
  await expect(into).rejects.toThrow("row-level security");
  const moved = asProgram(theirs.workspaceId, async (client) => {
    await client.query("INSERT INTO rate_source (currency, source) VALUES ('USD', 'x')");
    await client.query("UPDATE rate_source SET workspace_id = $1", [mine.workspaceId]);
  });
  await expect(moved).rejects.toThrow("row-level security");
});

test("a raw query in a scope sees that scope only", async () => {
  const found = await inWorkspace(
    theirs,
    (tx) =>
      tx.$queryRaw<unknown[]>`SELECT id FROM observation WHERE workspace_id = ${mine.workspaceId}::uuid`,
  );
  expect(found).toEqual([]);
});

test("looking for workspaces shows their settings, nothing inside them, and writes nothing", async () => {
  const seen = await findingWorkspaces(async (tx) => ({
    workspaces: await tx.workspace.count(),
    stores: await tx.store.count(),
    written: (await tx.workspace.updateMany({ data: { name: "x" } })).count,
  }));
  expect(seen).toEqual({ workspaces: 2, stores: 0, written: 0 });
});

test("the next piece of work on a connection does not inherit the scope of the last", async () => {
  await Promise.all(
    Array.from({ length: 30 }, async (_, n) => {
      const scope = n % 2 === 0 ? mine : theirs;
      const own = await inWorkspace(scope, (tx) => tx.$queryRaw<{ id: string }[]>`SELECT id FROM workspace`);
      expect(own).toEqual([{ id: scope.workspaceId }]);
    }),
  );
});

/** References of a table to another, where both are rows of a workspace: [table, column, referred table]. */
const REFERENCES = `SELECT c.conrelid::regclass::text AS "from", c.confrelid::regclass::text AS "to", a.attname AS column
  FROM pg_constraint c JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = c.conkey[2]
  WHERE c.contype = 'f' AND c.confrelid <> 'workspace'::regclass AND c.connamespace = current_schema()::regnamespace`;

test("the database itself refuses a reference into another workspace, even from one above the policies", async () => {
  const foreign: Readonly<Record<string, string>> = {
    store: things.store.id,
    material: things.material.id,
    observation: things.observed.id,
    project: things.project.id,
    requirement: things.requirement.id,
    lot: things.lot.id,
    bill: things.bill.id,
    stock_event: things.event?.id ?? "",
    stock_act: things.act,
    storage_place: things.lot.placeId ?? "",
    takeoff: things.takeoff.id,
    tax_region: things.region,
    reference_index: things.index.id,
    taken_file: things.index.file,
  };
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  const { rows } = await client.query<{ from: string; to: string; column: string }>(REFERENCES);
  expect(rows.map(({ from, to }) => `${from} of ${to}`).sort()).toEqual(ALL_REFERENCES);
  for (const { from, to, column } of rows) {
    await client.query("BEGIN");
    await client.query("SET LOCAL session_replication_role = origin");
    await client.query(
      "SELECT set_config('app.workspace', $1, true), set_config('app.reason', 'test', true)",
      [theirs.workspaceId],
    );
    await client.query(`ALTER TABLE ${from} DISABLE TRIGGER USER`);
    const found = await client.query(`SELECT id FROM ${from} WHERE workspace_id = $1 LIMIT 1`, [
      theirs.workspaceId,
    ]);
    expect(found.rows).toHaveLength(1);
    const moving = client.query(`UPDATE ${from} SET ${column} = $1 WHERE workspace_id = $2 AND id = $3`, [
      foreign[to],
      theirs.workspaceId,
      found.rows[0].id,
    ]);
    // What is set aside names no place, of whatever workspace: that is asked first.
    const placed = from === "stock_event" && to === "storage_place";
    const refusal = placed ? /stock_event_(from_)?place/ : "foreign key constraint";
    await expect(moving, `${from}.${column} of ${to}`).rejects.toThrow(refusal);
    await client.query("ROLLBACK");
  }
  await client.end();
});

test("every reference between rows of a workspace carries the workspace", async () => {
  const single = await aboutDatabase(
    (client) => client.$queryRaw<{ name: string }[]>`SELECT conname AS name FROM pg_constraint
      WHERE contype = 'f' AND confrelid <> 'workspace'::regclass AND connamespace = current_schema()::regnamespace
        AND cardinality(conkey) <> 2
        AND EXISTS (SELECT FROM pg_attribute WHERE attrelid = conrelid AND attname = 'workspace_id')`,
  );
  expect(single).toEqual([]);
});
