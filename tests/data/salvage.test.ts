import { v7 } from "uuid";
import { beforeAll, describe, expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import {
  addAskingPrice,
  askingPrices,
  redoAskingPrice,
  undoAskingPrice,
} from "../../lib/data/asking-prices.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { valuationOf } from "../../lib/data/facts.ts";
import { addReceipt, undoReceipt } from "../../lib/data/lot-receipts.ts";
import { addLot, lot } from "../../lib/data/lots.ts";
import { addMaterial } from "../../lib/data/materials.ts";
import { addRequirement, reviseRequirement } from "../../lib/data/requirements.ts";
import { addSalvage, salvage, salvages } from "../../lib/data/salvage.ts";
import { correctSalvage } from "../../lib/data/salvage-corrections.ts";
import { addStockEvent } from "../../lib/data/stock-events.ts";
import { requirementPatch } from "../../lib/projects/requirement-entry.ts";
import { askingPriceEntry } from "../../lib/stock/asking-price-entry.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { salvageCorrection, salvageEntry } from "../../lib/stock/salvage-entry.ts";
import { receiptEntry } from "../../lib/stock/stock-act-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  otherScope,
  ownerScope,
  someEvent,
  someLotEntry,
  someMaterialEntry,
  someRequirementEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const GOT = plusDays(today, -10);
let job: Awaited<ReturnType<typeof storedJob>>;
let boards = "";

beforeAll(async () => {
  job = await storedJob(scope);
  const board = {
    category: "dimensional-lumber",
    purchaseUnit: "linear-foot",
    dimensions: { nominalThickness: "2 in", nominalWidth: "4 in" },
  };
  boards = (await accepted(addMaterial(scope, v7(), someMaterialEntry(board)))).id;
});

/** 12 of 8 ft and 5 of 10 ft 3 in, 147.25 ft; 6.5 hours at 28, 35.50 to fetch, 40 paid: 257.50. */
const counted = (given: object = {}) => ({
  reclaimedFrom: "porch on Birch Road",
  hours: "6.5",
  hourlyRate: "28",
  hauling: "35.50",
  purchasePrice: "40",
  currency: "CAD",
  condition: "0.6",
  tally: [
    { pieces: "12", length: "8 ft" },
    { pieces: "5", length: "10 ft 3 in" },
  ],
  on: GOT,
  ...given,
});
const entry = (given: object = {}) => salvageEntry.parse({ materialId: boards, ...counted(given) });
const corrected = (given: object = {}) => salvageCorrection.parse(counted(given));
const need = (acceptsUsed: boolean) =>
  accepted(
    addRequirement(
      scope,
      job.project.id,
      v7(),
      someRequirementEntry(boards, today, {
        acceptsUsed,
        quantity: "100",
        unit: "linear-foot",
        validFrom: GOT,
      }),
    ),
  );

describe("salvage counted in", () => {
  test("is a lot whose cost is what it took to get, with its detail beside it", async () => {
    const { lot: made, detail } = await accepted(addSalvage(scope, v7(), entry()));
    expect(made).toMatchObject({ origin: "salvaged", orderedOn: GOT, storeId: null, deletedAt: null });
    expect([made.quantity, made.paid.amount, made.condition].map((one) => one.toFixed())).toEqual([
      "147.25",
      "257.5",
      "0.6",
    ]);
    expect(detail).toMatchObject({ lotId: made.id, reclaimedFrom: "porch on Birch Road", projectId: null });
    expect(detail.tally.map(({ pieces, length }) => `${pieces} x ${length}`)).toEqual([
      "12 x 8 ft",
      "5 x 10 ft 3 in",
    ]);
    const material = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
    const cost = lotCost(made, { ...material, id: boards }, await valuationOf(scope));
    expect(cost.known && cost.cost.amount.toFixed()).toBe("257.5");
    expect((await salvages(scope)).map((one) => one.lot.id)).toContain(made.id);
  });

  test("is refused by row, project, material and day, nothing stored", async () => {
    const before = (await salvages(scope)).length;
    const odd = entry({
      tally: [{ pieces: "1", length: "8" }, { pieces: "2", length: "9 ft" }, { pieces: "1" }],
      on: plusDays(today, 3),
      projectId: v7(),
    });
    expect(await faultsIn(addSalvage(scope, v7(), odd))).toEqual([
      "tally.0.length: length-unit-missing",
      "tally.2.length: missing",
      "projectId: not-there",
      "on: day-ahead",
    ]);
    expect(await faultsIn(addSalvage(scope, v7(), { ...entry(), materialId: v7() }))).toEqual([
      "materialId: not-there",
    ]);
    expect((await salvages(scope)).length).toBe(before);
  });

  test("sent again is recorded once; another content, and the id of a plain lot, are not taken", async () => {
    const id = v7();
    await accepted(addSalvage(scope, id, entry()));
    expect(await addSalvage(scope, id, entry())).toMatchObject({ ok: true, repeated: true });
    expect(await addSalvage(scope, id, entry({ hours: "7" }))).toMatchObject({ why: "conflict" });
    const plain = await accepted(addLot(scope, v7(), someLotEntry(job.material.id, GOT)));
    expect(await faultsIn(addSalvage(scope, plain.id, entry()))).toEqual(["id: used-id"]);
  });

  test("is not seen from another workspace", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    const other = await otherScope();
    expect(await salvage(other, made.id)).toBeNull();
    expect(await correctSalvage(other, made.id, corrected())).toMatchObject({ why: "not-there" });
    expect(await addAskingPrice(other, made.id, v7(), asking("5"))).toMatchObject({ why: "not-there" });
    expect(await salvages(other)).toEqual([]);
  });
});

describe("salvage corrected", () => {
  test("moves cost, quantity and condition of its lot, and what was stays readable", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    const change = {
      hours: "8",
      condition: "0.5",
      tally: [{ pieces: "10", length: "8 ft" }],
      note: "recounted",
    };
    const { lot: after, detail } = await accepted(correctSalvage(scope, made.id, corrected(change)));
    expect([after.quantity, after.paid.amount, after.condition].map((one) => one.toFixed())).toEqual([
      "80",
      "299.5", // 8 x 28 + 35.50 + 40
      "0.5",
    ]);
    expect(after.receipts.map((one) => one.quantity.toFixed())).toEqual(["80"]);
    expect(detail.hours.toFixed()).toBe("8");
    const more = await accepted(correctSalvage(scope, made.id, corrected()));
    expect(more.lot.quantity.toFixed()).toBe("147.25");
    const { items } = await changesOf(scope, { of: made.id });
    const before = items.filter(({ noun }) => noun === "salvage").map((one) => one.before?.hours ?? null);
    expect(before).toEqual(["8", "6.5", null]);
  });

  test("came in as a whole again, also where its receipt was undone or came in parts", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    const [whole] = made.receipts;
    await accepted(undoReceipt(scope, whole?.id ?? ""));
    const none = await accepted(correctSalvage(scope, made.id, corrected()));
    expect(none.lot.receipts.map((one) => one.quantity.toFixed())).toEqual(["147.25"]);
    await accepted(undoReceipt(scope, none.lot.receipts[0]?.id ?? ""));
    for (const quantity of ["100", "47.25"])
      await accepted(addReceipt(scope, made.id, v7(), receiptEntry.parse({ quantity, on: GOT })));
    const fewer = corrected({ tally: [{ pieces: "10", length: "8 ft" }] });
    const after = await accepted(correctSalvage(scope, made.id, fewer));
    expect(after.lot.receipts.map((one) => one.quantity.toFixed())).toEqual(["80"]);
  });

  test("is refused where what happened since leaves no room for it, and on a lot that is no salvage", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    await accepted(addStockEvent(scope, made.id, v7(), someEvent("drawn", "100", today)));
    const fewer = corrected({ tally: [{ pieces: "10", length: "8 ft" }] });
    expect(await faultsIn(correctSalvage(scope, made.id, fewer))).toEqual([": event-in-the-way"]);
    expect((await lot(scope, made.id))?.quantity.toFixed()).toBe("147.25");
    const plain = await accepted(addLot(scope, v7(), someLotEntry(job.material.id, GOT)));
    expect(await faultsIn(correctSalvage(scope, plain.id, corrected()))).toEqual([": not-salvage"]);
  });
});

describe("a requirement that does not accept used material", () => {
  test("is given no salvage: neither set aside nor drawn, until it says it accepts it", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    const asked = await need(false);
    const happened = (kind: string) =>
      addStockEvent(scope, made.id, v7(), someEvent(kind, "10", today, { requirementId: asked.id }));
    expect(await faultsIn(happened("allocated"))).toEqual(["requirementId: used-not-accepted"]);
    expect(await faultsIn(happened("drawn"))).toEqual(["requirementId: used-not-accepted"]);
    await accepted(reviseRequirement(scope, asked.id, requirementPatch.parse({ acceptsUsed: true })));
    await accepted(happened("allocated"));
    await accepted(happened("drawn"));
  });

  test("is not given what was bought used either, and lets go of what it holds", async () => {
    const asked = await need(false);
    const used = someLotEntry(boards, today, { terms: "used" });
    expect(await faultsIn(addLot(scope, v7(), used, { allocateTo: asked.id }))).toEqual([
      "requirementId: used-not-accepted",
    ]);
    const open = await need(true);
    const { id } = await accepted(addLot(scope, v7(), used, { allocateTo: open.id }));
    await accepted(reviseRequirement(scope, open.id, requirementPatch.parse({ acceptsUsed: false })));
    const held = { requirementId: open.id };
    expect(await faultsIn(addStockEvent(scope, id, v7(), someEvent("drawn", "1", today, held)))).toEqual([
      "requirementId: used-not-accepted",
    ]);
    await accepted(addStockEvent(scope, id, v7(), someEvent("released", "10", today, held)));
  });

  test("takes new material as before", async () => {
    const asked = await need(false);
    await accepted(addLot(scope, v7(), someLotEntry(boards, today), { allocateTo: asked.id }));
  });
});

const asking = (amount: string | null, since = today) =>
  askingPriceEntry.parse({ amount, currency: "CAD", since });

describe("salvage put up for sale", () => {
  test("keeps each asking price with its day; one is undone and redone", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    const first = await accepted(addAskingPrice(scope, made.id, v7(), asking("2.25", GOT)));
    const second = await accepted(addAskingPrice(scope, made.id, v7(), asking(null)));
    const all = async () =>
      (await askingPrices(scope, made.id)).map((one) => one.amount?.amount.toFixed() ?? null);
    expect(await all()).toEqual(["2.25", null]);
    await accepted(undoAskingPrice(scope, second.id));
    expect(await all()).toEqual(["2.25"]);
    expect(await undoAskingPrice(scope, second.id)).toMatchObject({ repeated: true });
    await accepted(redoAskingPrice(scope, second.id));
    expect(await all()).toEqual(["2.25", null]);
    expect((await askingPrices(scope)).map(({ id }) => id)).toContain(first.id);
    const { items } = await changesOf(scope, { of: made.id });
    expect(items.filter(({ noun }) => noun === "asking_price").map(({ action }) => action)).toEqual([
      "redone",
      "undone",
      "created",
      "created",
    ]);
  });

  test("is not asked before it was there, nor ahead of today", async () => {
    const { lot: made } = await accepted(addSalvage(scope, v7(), entry()));
    const refused = (since: typeof today) =>
      faultsIn(addAskingPrice(scope, made.id, v7(), asking("2", since)));
    expect(await refused(plusDays(GOT, -1))).toEqual(["since: before-acquisition"]);
    expect(await refused(plusDays(today, 2))).toEqual(["since: day-ahead"]);
  });
});
