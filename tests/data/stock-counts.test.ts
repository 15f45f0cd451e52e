import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addStockCount } from "../../lib/data/stock-counts.ts";
import { addStockEvent, eventsOf } from "../../lib/data/stock-events.ts";
import { stockCountEntry } from "../../lib/stock/stock-event-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, ownerScope, someEvent, storedStock } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const counted = (quantity: string, ago = 0) => stockCountEntry.parse({ quantity, on: plusDays(today, -ago) });
const stock = () => storedStock(scope, plusDays(today, -9));

test("counting fewer than there should be records what is missing, counting more what was found", async () => {
  const { lot } = await stock();
  await accepted(addStockEvent(scope, lot.id, v7(), someEvent("drawn", "4", plusDays(today, -3))));
  await accepted(addStockCount(scope, lot.id, v7(), counted("5", 2)));
  await accepted(addStockCount(scope, lot.id, v7(), counted("7.5", 1)));
  const events = await eventsOf(scope, lot.id);
  expect(events.map(({ kind, quantity }) => `${kind} ${quantity.toFixed()}`)).toEqual([
    "drawn 4",
    "missing 1",
    "found 2.5",
  ]);
});

test("counting exactly what is in the books records nothing", async () => {
  const { lot } = await stock();
  expect(await addStockCount(scope, lot.id, v7(), counted("10"))).toMatchObject({ ok: true, value: null });
  expect(await eventsOf(scope, lot.id)).toEqual([]);
});

test("the same count again is repeated, another under its id a conflict", async () => {
  const { lot } = await stock();
  const id = v7();
  await accepted(addStockCount(scope, lot.id, id, counted("8")));
  expect(await addStockCount(scope, lot.id, id, counted("8"))).toMatchObject({ ok: true, repeated: true });
  expect(await addStockCount(scope, lot.id, id, counted("7"))).toMatchObject({ why: "conflict" });
  expect(await eventsOf(scope, lot.id)).toHaveLength(1);
});

test("a count of the same day by two people at once is one loss, not two", async () => {
  const { lot } = await stock();
  await Promise.all([1, 2, 3, 4].map(() => addStockCount(scope, lot.id, v7(), counted("6"))));
  const events = await eventsOf(scope, lot.id);
  expect(events.map(({ kind, quantity }) => `${kind} ${quantity.toFixed()}`)).toEqual(["missing 4"]);
});

test("what is missing is never taken from what is set aside: that is released first", async () => {
  const { lot, requirement } = await stock();
  const aside = someEvent("allocated", "9", plusDays(today, -5), { requirementId: requirement.id });
  await accepted(addStockEvent(scope, lot.id, v7(), aside));
  expect(await faultsIn(addStockCount(scope, lot.id, v7(), counted("8")))).toEqual([
    "quantity: more-than-free",
  ]);
  await accepted(addStockCount(scope, lot.id, v7(), counted("9")));
});
