import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { lot as lotOf } from "../../lib/data/lots.ts";
import { placeContents } from "../../lib/data/place-contents.ts";
import { addPlace, archivePlace, changePlace, place, placesOf, restorePlace } from "../../lib/data/places.ts";
import { addStockEvent, eventsOf, undoStockEvent } from "../../lib/data/stock-events.ts";
import { lyingOn } from "../../lib/stock/lying.ts";
import { placeEntry, placePatch } from "../../lib/stock/place-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  newName,
  otherScope,
  ownerScope,
  someEvent,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const ago = (days: number) => plusDays(today, -days);

/** A place of a name of its own. */
function somePlace(given: Readonly<Record<string, unknown>> = {}) {
  return accepted(addPlace(scope, v7(), placeEntry.parse({ name: newName("Shed"), ...given })));
}
const stock = (given: Readonly<Record<string, unknown>> = {}) => storedStock(scope, ago(30), given);
const move = (lotId: string, quantity: string, days: number, given: Readonly<Record<string, unknown>>) =>
  addStockEvent(scope, lotId, v7(), someEvent("moved", quantity, ago(days), given));

/** Where a lot lies today, by the names of places; "" is nowhere said. */
async function lying(lotId: string): Promise<Record<string, string>> {
  const lot = await lotOf(scope, lotId);
  if (lot === null) throw new Error("the lot is not there");
  const names = new Map((await placesOf(scope)).map(({ id, name }) => [id, name]));
  return Object.fromEntries(
    lyingOn(lot, await eventsOf(scope, lotId), today).map(({ placeId, quantity }) => [
      placeId === null ? "" : (names.get(placeId) ?? placeId),
      quantity.toFixed(),
    ]),
  );
}

test("a place comes back as entered, is changed, archived and restored, and every change is on record", async () => {
  const id = v7();
  const entry = placeEntry.parse({
    name: "Garage",
    note: "mind the door",
    area: "40 sq ft",
    volume: "3 m3",
    weight: "900 kg",
    count: "60",
    covered: true,
    ventilated: false,
  });
  await accepted(addPlace(scope, id, entry));
  expect(await place(scope, id)).toEqual({ ...entry, id, archivedOn: null });
  expect(await addPlace(scope, id, entry)).toMatchObject({ ok: true, repeated: true });
  await accepted(changePlace(scope, id, placePatch.parse({ weight: null, area: "5 m2" })));
  expect(await place(scope, id)).toMatchObject({
    weight: null,
    area: { unit: "square-metre" },
    covered: true,
  });
  await accepted(archivePlace(scope, id));
  expect((await placesOf(scope)).map((one) => one.id)).not.toContain(id);
  await accepted(addPlace(scope, v7(), placeEntry.parse({ name: "garage" })));
  expect(await faultsIn(restorePlace(scope, id))).toEqual(["name: name-taken"]);
  const { items } = await changesOf(scope, { of: id });
  expect(items.map(({ action }) => action).sort()).toEqual(["archived", "changed", "created"]);
  expect(await place(await otherScope(), id)).toBeNull();
});

test("what comes in lies where the lot was put; moves and draws are taken from the place they name", async () => {
  const { lot } = await stock({ storedAt: "Porch" });
  const shed = await somePlace();
  await accepted(move(lot.id, "6", 20, { placeId: shed.id }));
  expect(await lying(lot.id)).toEqual({ Porch: "4", [shed.name]: "6" });
  await accepted(addStockEvent(scope, lot.id, v7(), someEvent("drawn", "3", ago(10), { placeId: shed.id })));
  await accepted(addStockEvent(scope, lot.id, v7(), someEvent("found", "1", ago(9), { placeId: shed.id })));
  expect(await lying(lot.id)).toEqual({ Porch: "4", [shed.name]: "4" });
  await accepted(move(lot.id, "4", 5, { placeId: null, fromPlaceId: shed.id }));
  expect(await lying(lot.id)).toEqual({ Porch: "4", "": "4" });
});

test("no more is moved from a place than lies there, nor to where it lies already; an archived one takes nothing", async () => {
  const { lot } = await stock({ storedAt: "Porch" });
  const shed = await somePlace();
  const from = { placeId: null, fromPlaceId: shed.id };
  expect(await faultsIn(move(lot.id, "1", 20, from))).toEqual(["quantity: more-than-in-place"]);
  expect(await faultsIn(move(lot.id, "11", 20, { placeId: shed.id }))).toEqual([
    "quantity: more-than-in-place",
  ]);
  expect(await faultsIn(move(lot.id, "1", 20, { placeId: shed.id, fromPlaceId: shed.id }))).toEqual([
    "placeId: already-there",
  ]);
  expect(await faultsIn(move(lot.id, "1", 20, { placeId: v7() }))).toEqual(["placeId: not-there"]);
  await accepted(archivePlace(scope, shed.id));
  expect(await faultsIn(move(lot.id, "1", 20, { placeId: shed.id }))).toEqual(["placeId: archived"]);
});

test("a move that a later draw from that place needs is not undone; the draw is named", async () => {
  const { lot } = await stock({ storedAt: "Porch" });
  const shed = await somePlace();
  const moved = await accepted(move(lot.id, "6", 20, { placeId: shed.id }));
  const drawn = await accepted(
    addStockEvent(scope, lot.id, v7(), someEvent("drawn", "5", ago(10), { placeId: shed.id })),
  );
  expect(await undoStockEvent(scope, moved.id)).toMatchObject({
    faults: [{ code: "event-in-the-way", values: { event: drawn.id, kind: "drawn" } }],
  });
  await accepted(undoStockEvent(scope, drawn.id));
  await accepted(undoStockEvent(scope, moved.id));
  expect(await lying(lot.id)).toEqual({ Porch: "10" });
});

test("twenty moves of ten sheets at once put exactly ten there", async () => {
  const { lot } = await stock({ storedAt: "Porch" });
  const shed = await somePlace();
  const answers = await Promise.all(
    Array.from({ length: 20 }, () => move(lot.id, "1", 1, { placeId: shed.id })),
  );
  expect(answers.filter(({ ok }) => ok)).toHaveLength(10);
  expect(await lying(lot.id)).toEqual({ [shed.name]: "10" });
});

test("places say what lies in them on a day", async () => {
  const shed = await somePlace();
  const one = await stock({ placeId: shed.id });
  const two = await stock();
  await accepted(move(two.lot.id, "3", 5, { placeId: shed.id }));
  const inShed = async (days: number) => {
    const { places } = await placeContents(scope, ago(days));
    const found = places.find((known) => known.place.id === shed.id);
    return Object.fromEntries((found?.loads ?? []).map((load) => [load.lotId, load.quantity.toFixed()]));
  };
  expect(await inShed(6)).toEqual({ [one.lot.id]: "10" });
  expect(await inShed(5)).toEqual({ [one.lot.id]: "10", [two.lot.id]: "3" });
});
