import pg from "pg";
import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addStockEvent, eventsOf, undoStockEvent } from "../../lib/data/stock-events.ts";
import { lotState } from "../../lib/stock/lot-state.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, ownerScope, someEvent, storedStock } from "../support/stored-things.ts";

const url = await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const boughtOn = plusDays(today, -30);

test("twenty allocations of the last ten sheets at once end with exactly ten allocated", async () => {
  const { lot, requirement } = await storedStock(scope, boughtOn);
  const entry = someEvent("allocated", "1", today, { requirementId: requirement.id });
  const answers = await Promise.all(
    Array.from({ length: 20 }, () => addStockEvent(scope, lot.id, v7(), entry)),
  );
  expect(answers.filter(({ ok }) => ok)).toHaveLength(10);
  for (const answer of answers)
    if (!answer.ok) expect(answer).toMatchObject({ faults: [{ code: "more-than-free" }] });
  const state = lotState(lot, await eventsOf(scope, lot.id), today);
  expect(state.allocated.get(requirement.id)?.toFixed()).toBe("10");
  expect(state.free.toFixed()).toBe("0");
});

test("draws, sales, back-dated allocations and undoings at once never take more than there is", async () => {
  const { lot, requirement } = await storedStock(scope, boughtOn);
  const forJob = { requirementId: requirement.id };
  const wanted = Array.from({ length: 24 }, (_, n) => {
    const on = plusDays(today, -(n % 7));
    if (n % 4 === 0) return someEvent("allocated", "2", on, forJob);
    if (n % 4 === 1) return someEvent("drawn", "1.5", on, forJob);
    return n % 4 === 2
      ? someEvent("sold", "1", on, { amount: "3", currency: "CAD" })
      : someEvent("drawn", "1", on);
  });
  const answers = await Promise.all(
    wanted.map(async (entry, n) => {
      const answer = await addStockEvent(scope, lot.id, v7(), entry);
      return answer.ok && n % 5 === 0 ? undoStockEvent(scope, answer.value.id) : answer;
    }),
  );
  expect(answers.some(({ ok }) => ok)).toBe(true);
  const events = await eventsOf(scope, lot.id);
  for (let ago = 30; ago >= 0; ago -= 1) {
    const state = lotState(lot, events, plusDays(today, -ago));
    const held = [...state.allocated.values()].reduce((sum, one) => sum.plus(one), state.free);
    expect(held.plus(state.gone).toFixed()).toBe("10");
    expect(state.free.isNegative()).toBe(false);
  }
});

/** A session of its own, past lib/data: what another program could do. */
async function asAnotherProgram<T>(work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("BEGIN");
    await client.query("SELECT set_config('app.workspace', $1, true)", [scope.workspaceId]);
    const answer = await work(client);
    await client.query("COMMIT");
    return answer;
  } finally {
    await client.end();
  }
}

const INSERT = `INSERT INTO stock_event (workspace_id, id, lot_id, kind, quantity, on_day, requirement_id, entry_hash)
  VALUES ($1, $2, $3, $4, $5, $6, $7, '')`;

test("the database itself refuses stock from nothing, whoever writes", async () => {
  const { lot, requirement } = await storedStock(scope, boughtOn);
  const insert = (kind: string, quantity: number, on: string, forOne: string | null = null) =>
    asAnotherProgram((client) =>
      client.query(INSERT, [scope.workspaceId, v7(), lot.id, kind, quantity, on, forOne]),
    );
  await expect(insert("drawn", 11, today)).rejects.toThrow("would hold less than nothing");
  await insert("drawn", 8, plusDays(today, -5));
  await expect(insert("drawn", 3, plusDays(today, -10))).rejects.toThrow("would hold less than nothing");
  await expect(insert("allocated", 3, today, requirement.id)).rejects.toThrow("would hold less than nothing");
  await insert("allocated", 2, today, requirement.id);
});

test("two programs drawing past lib/data at once: the second waits for the first, and is refused", async () => {
  const { lot } = await storedStock(scope, boughtOn);
  const draw = () =>
    asAnotherProgram((client) =>
      client.query(INSERT, [scope.workspaceId, v7(), lot.id, "drawn", 6, today, null]),
    ).then(
      () => "drawn",
      (error: Error) => error.message,
    );
  const answers = await Promise.all([draw(), draw(), draw()]);
  expect(answers.filter((answer) => answer === "drawn")).toHaveLength(1);
});

test("an event's figures are never rewritten, and a lot is never made smaller than what has left it", async () => {
  const { lot } = await storedStock(scope, boughtOn);
  const { id } = await accepted(addStockEvent(scope, lot.id, v7(), someEvent("drawn", "4", today)));
  const change = (sql: string, of: string) => asAnotherProgram((client) => client.query(sql, [of]));
  await expect(change("UPDATE stock_event SET quantity = 1 WHERE id = $1", id)).rejects.toThrow(
    "never rewritten",
  );
  await expect(change("UPDATE lot SET quantity = 3 WHERE id = $1", lot.id)).rejects.toThrow(
    "less than nothing",
  );
});
