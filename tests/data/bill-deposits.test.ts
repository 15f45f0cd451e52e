import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { depositEventEntry } from "../../lib/bills/deposit-event-entry.ts";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addDepositEvent, redoDepositEvent, undoDepositEvent } from "../../lib/data/bill-deposits.ts";
import { addBill, bill, undoBill } from "../../lib/data/bills.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  faultsIn,
  otherScope,
  ownerScope,
  someBillEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const boughtOn = plusDays(today, -4);
let job: Awaited<ReturnType<typeof storedJob>>;
const happened = (given: object) =>
  depositEventEntry.parse({ deposit: 0, kind: "forfeited", amount: "25", on: today, ...given });

beforeAll(async () => {
  job = await storedJob(scope);
});

const receipt = () =>
  accepted(
    addBill(
      scope,
      v7(),
      someBillEntry(job.material.id, job.store.id, boughtOn, {
        deposits: [
          { name: "Pallets", amount: "50" },
          { name: "Reel", amount: "10", forfeited: true },
        ],
      }),
    ),
  );

test("what became of a deposit is kept with its bill, undone and redone without touching the bill", async () => {
  const { id } = await receipt();
  const lost = await accepted(addDepositEvent(scope, id, v7(), happened({ note: "left on site" })));
  expect(lost).toMatchObject({ billId: id, deposit: 0, kind: "forfeited", on: today, note: "left on site" });
  const kept = async () => (await bill(scope, id))?.deposited.map((one) => one.id);
  expect(await kept()).toEqual([lost.id]);
  await accepted(undoDepositEvent(scope, lost.id));
  expect(await kept()).toEqual([]);
  expect(await undoDepositEvent(scope, lost.id)).toMatchObject({ ok: true, repeated: true });
  await accepted(redoDepositEvent(scope, lost.id));
  expect(await kept()).toEqual([lost.id]);
  expect((await bill(scope, id))?.deletedAt).toBeNull();
});

test("no more than was paid for a deposit can be forfeited and given back", async () => {
  const { id } = await receipt();
  const first = await accepted(addDepositEvent(scope, id, v7(), happened({ amount: "30" })));
  const back = happened({ kind: "given-back", amount: "20.01" });
  expect(await faultsIn(addDepositEvent(scope, id, v7(), back))).toEqual(["amount: more-than-held"]);
  await accepted(undoDepositEvent(scope, first.id));
  await accepted(addDepositEvent(scope, id, v7(), back));
  expect(await faultsIn(redoDepositEvent(scope, first.id))).toEqual(["amount: more-than-held"]);
});

test("a day before the bill or still to come, and a deposit it has not, are refused", async () => {
  const { id } = await receipt();
  const refused = (given: object) => faultsIn(addDepositEvent(scope, id, v7(), happened(given)));
  expect(await refused({ on: plusDays(boughtOn, -1) })).toEqual(["on: days-reversed"]);
  expect(await refused({ on: plusDays(today, 2) })).toEqual(["on: day-ahead"]);
  expect(await refused({ deposit: 2 })).toEqual(["deposit: not-there"]);
  expect(await refused({ deposit: 1 })).toEqual(["deposit: not-there"]);
});

test("the same sent again is recorded once; of an undone bill, and from another workspace, nothing is", async () => {
  const { id } = await receipt();
  const own = v7();
  await accepted(addDepositEvent(scope, id, own, happened({})));
  expect(await addDepositEvent(scope, id, own, happened({}))).toMatchObject({ ok: true, repeated: true });
  expect(await addDepositEvent(scope, id, own, happened({ amount: "5" }))).toMatchObject({ why: "conflict" });
  const theirs = await otherScope();
  expect(await addDepositEvent(theirs, id, v7(), happened({}))).toMatchObject({ why: "not-there" });
  expect(await undoDepositEvent(theirs, own)).toMatchObject({ why: "not-there" });
  await accepted(undoBill(scope, id));
  expect(await addDepositEvent(scope, id, v7(), happened({}))).toMatchObject({ why: "not-there" });
});

test("every step is in the bill's history", async () => {
  const { id } = await receipt();
  const lost = await accepted(addDepositEvent(scope, id, v7(), happened({})));
  await accepted(undoDepositEvent(scope, lost.id));
  const { items } = await changesOf(scope, { of: id });
  const steps = items.filter(({ noun }) => noun === "deposit_event").map(({ action }) => action);
  expect(steps.reverse()).toEqual(["created", "undone"]);
});
