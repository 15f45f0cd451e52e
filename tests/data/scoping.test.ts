import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { exposureFacts, materialFacts, offerFacts, savingsFacts, valuationOf } from "../../lib/data/facts.ts";
import { addPayment } from "../../lib/data/lot-payments.ts";
import { addReceipt } from "../../lib/data/lot-receipts.ts";
import { addLot, deleteLot, lot, lotsOf } from "../../lib/data/lots.ts";
import { archiveMaterial, changeMaterial, material, materialsOf } from "../../lib/data/materials.ts";
import {
  addObservation,
  correctionsOf,
  correctObservation,
  deleteObservation,
  historyOf,
  observation,
  observationsOf,
} from "../../lib/data/observations.ts";
import { contentsOfPlace } from "../../lib/data/place-contents.ts";
import { archivePlace, changePlace, place, placesOf } from "../../lib/data/places.ts";
import { changeProject, project, projectsOf } from "../../lib/data/projects.ts";
import { recentObservations } from "../../lib/data/recent-observations.ts";
import {
  addRequirement,
  closeRequirement,
  requirement,
  requirementsOf,
  reviseRequirement,
} from "../../lib/data/requirements.ts";
import { stockAct, undoAct } from "../../lib/data/stock-acts.ts";
import { addStockEvent, eventsOf, stockEvent, undoStockEvent } from "../../lib/data/stock-events.ts";
import { leftoversOf } from "../../lib/data/stock-leftovers.ts";
import { countPlace } from "../../lib/data/stock-place-acts.ts";
import { archiveStore, changeStore, store, storesOf } from "../../lib/data/stores.ts";
import { decimal } from "../../lib/decimal.ts";
import { paymentEntry, placeCountEntry, receiptEntry } from "../../lib/stock/stock-act-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  otherScope,
  ownerScope,
  someEvent,
  someLotEntry,
  someObservationEntry,
  someRequirementEntry,
  storedJob,
  storedStock,
} from "../support/stored-things.ts";

await freshDatabase();
const mine = await ownerScope();
const { today } = mine;
const theirs = { ...(await otherScope()), today };
const boughtOn = plusDays(today, -5);
const NOT_THERE = { ok: false, why: "not-there" };
let things: Awaited<ReturnType<typeof storedThings>>;

async function storedThings() {
  const stock = await storedStock(mine, boughtOn, { storedAt: "Shed" });
  const seen = someObservationEntry(stock.material.id, stock.store.id, today);
  const observed = await accepted(addObservation(mine, v7(), seen));
  await accepted(correctObservation(mine, observed.id, { amount: decimal("2") }, "misread"));
  const entry = someEvent("allocated", "1", today, { requirementId: stock.requirement.id });
  const event = await accepted(addStockEvent(mine, stock.lot.id, v7(), entry));
  const placeId = stock.lot.placeId ?? "";
  const count = placeCountEntry.parse({ on: today, counts: [] });
  const act = await accepted(countPlace(mine, placeId, v7(), count));
  return { ...stock, observed, event, placeId, act };
}

beforeAll(async () => {
  things = await storedThings();
});

test("another workspace's things are not there to read", async () => {
  expect(await store(theirs, things.store.id)).toBeNull();
  expect(await material(theirs, things.material.id)).toBeNull();
  expect(await observation(theirs, things.observed.id)).toBeNull();
  expect(await project(theirs, things.project.id)).toBeNull();
  expect(await requirement(theirs, things.requirement.id)).toBeNull();
  expect(await lot(theirs, things.lot.id)).toBeNull();
  expect(await stockEvent(theirs, things.event.id)).toBeNull();
  expect(await place(theirs, things.placeId)).toBeNull();
  expect(await contentsOfPlace(theirs, things.placeId, today)).toBeNull();
  expect(await stockAct(theirs, things.act.id)).toBeNull();
  expect(await leftoversOf(theirs, things.project.id, today)).toBeNull();
  expect(await materialFacts(theirs, things.material.id, today)).toBeNull();
});

test("nor are they in any list", async () => {
  const lists = [
    await placesOf(theirs),
    await storesOf(theirs),
    await storesOf(theirs, { archived: true }),
    await materialsOf(theirs),
    (await observationsOf(theirs, things.material.id, { includeDeleted: true })).items,
    await historyOf(theirs, things.material.id, today),
    await correctionsOf(theirs, things.observed.id),
    await recentObservations(theirs, [things.material.id], today),
    await projectsOf(theirs),
    await requirementsOf(theirs),
    await requirementsOf(theirs, things.project.id),
    await lotsOf(theirs),
    await eventsOf(theirs, things.lot.id, { includeUndone: true }),
    (await changesOf(theirs, { of: things.lot.id })).items,
  ];
  for (const list of lists) expect(list).toEqual([]);
  expect((await valuationOf(theirs)).stores.size).toBe(0);
});

test("nor among the facts of a figure", async () => {
  for (const facts of [
    await exposureFacts(theirs, today),
    await exposureFacts(theirs, today, things.project.id),
    await offerFacts(theirs, today),
    await savingsFacts(theirs, null, today),
    await savingsFacts(theirs, things.project.id, today),
  ])
    expect([
      facts.materials.size,
      facts.projects.length,
      facts.requirements.length,
      facts.observations.length,
      facts.lots.length,
      facts.events.length,
      facts.valuation.stores.size,
    ]).toEqual([0, 0, 0, 0, 0, 0, 0]);
});

test("nor are they there to write", async () => {
  const entry = someRequirementEntry(things.material.id, today);
  for (const answer of [
    await changeStore(theirs, things.store.id, { name: "x" }),
    await archiveStore(theirs, things.store.id),
    await changeMaterial(theirs, things.material.id, { note: "x" }),
    await archiveMaterial(theirs, things.material.id),
    await correctObservation(theirs, things.observed.id, { note: "x" }, "why"),
    await deleteObservation(theirs, things.observed.id),
    await changeProject(theirs, things.project.id, { note: "x" }),
    await addRequirement(theirs, things.project.id, v7(), entry),
    await reviseRequirement(theirs, things.requirement.id, { quantity: decimal("1") }),
    await closeRequirement(theirs, things.requirement.id, today),
    await deleteLot(theirs, things.lot.id),
    await addStockEvent(theirs, things.lot.id, v7(), someEvent("drawn", "1", today)),
    await undoStockEvent(theirs, things.event.id),
    await changePlace(theirs, things.placeId, { note: "x" }),
    await archivePlace(theirs, things.placeId),
    await countPlace(theirs, things.placeId, v7(), placeCountEntry.parse({ on: today, counts: [] })),
    await addReceipt(theirs, things.lot.id, v7(), receiptEntry.parse({ quantity: "1", on: today })),
    await addPayment(theirs, things.lot.id, v7(), paymentEntry.parse({ amount: "1", on: today })),
    await undoAct(theirs, things.act.id),
  ])
    expect(answer).toEqual(NOT_THERE);
  expect(await storedIsAsBefore()).toBe(true);
});

async function storedIsAsBefore(): Promise<boolean> {
  const now = await observation(mine, things.observed.id);
  return now?.deletedAt === null && (await lot(mine, things.lot.id))?.deletedAt === null;
}

test("nor can what is entered name them", async () => {
  const own = await storedJob(theirs);
  const seen = someObservationEntry(things.material.id, things.store.id, today);
  expect(await faultsIn(addObservation(theirs, v7(), seen))).toEqual([
    "materialId: not-there",
    "storeId: not-there",
  ]);
  const bought = someLotEntry(things.material.id, today, {
    storeId: things.store.id,
    observationId: things.observed.id,
  });
  expect(await faultsIn(addLot(theirs, v7(), bought, { allocateTo: things.requirement.id }))).toEqual([
    "materialId: not-there",
    "storeId: not-there",
    "observationId: not-there",
    "requirementId: not-there",
  ]);
  const line = someRequirementEntry(own.material.id, today, {
    alternatives: [{ materialId: things.material.id, factor: "1" }],
  });
  expect(await faultsIn(addRequirement(theirs, own.project.id, v7(), line))).toEqual([
    "alternatives.0.materialId: not-there",
  ]);
});

test("the same id in two workspaces is two things", async () => {
  const own = await storedJob(theirs);
  const bought = someLotEntry(own.material.id, today, { quantity: "3" });
  await accepted(addLot(theirs, things.lot.id, bought));
  expect((await lot(theirs, things.lot.id))?.quantity.toFixed()).toBe("3");
  expect((await lot(mine, things.lot.id))?.quantity.toFixed()).toBe("10");
});
