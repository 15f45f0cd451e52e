import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { localDate, plusDays } from "../../lib/calendar/local-date.ts";
import {
  addObservation,
  addObservations,
  correctionsOf,
  correctObservation,
  deleteObservation,
  historyOf,
  observation,
  observationsOf,
  undeleteObservation,
} from "../../lib/data/observations.ts";
import { recentObservations } from "../../lib/data/recent-observations.ts";
import { archiveStore } from "../../lib/data/stores.ts";
import { decimal } from "../../lib/decimal.ts";
import { observationCorrection } from "../../lib/prices/observation-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, ownerScope, someObservationEntry, storedJob } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
let job: Awaited<ReturnType<typeof storedJob>>;
const seen = (given: Readonly<Record<string, unknown>> = {}) =>
  someObservationEntry(job.material.id, job.store.id, today, given);
const correction = (given: Readonly<Record<string, unknown>>) => {
  const { reason, ...patch } = observationCorrection.parse({ reason: "misread", ...given });
  return [patch, reason] as const;
};

beforeAll(async () => {
  job = await storedJob(scope);
});

test("a sighting comes back exactly as entered", async () => {
  const id = v7();
  const entry = seen({
    amount: "20.00",
    per: { quantity: "3", unit: "sheet" },
    terms: "quantity-break",
    taxIncluded: true,
    taxRegion: "CA-NB",
    exemptFrom: ["HST"],
    minQuantity: "3",
    maxQuantity: "38.5",
    packSize: "0.5",
    from: today,
    until: plusDays(today, 9),
    fees: [
      { name: "Cut", amount: "1.25", basis: "unit", taxable: true },
      { name: "Delivery", amount: "60.00", basis: "order", freeFrom: "500.00", taxable: false },
      { name: "Levy", percent: "0.75", basis: "unit", taxable: true },
    ],
    note: "by the door",
  });
  await accepted(addObservation(scope, id, entry));
  expect(await observation(scope, id)).toEqual({ ...entry, id, deletedAt: null, corrections: 0 });
});

test("amounts keep every digit: 999999999.999999 and 0.000001", async () => {
  for (const amount of ["999999999.999999", "0.000001"]) {
    const { id } = await accepted(addObservation(scope, v7(), seen({ amount })));
    expect((await observation(scope, id))?.amount?.amount.toFixed()).toBe(amount);
  }
});

test("none left has no amount", async () => {
  const entry = seen({ terms: "none-left", amount: undefined, currency: undefined });
  const { id } = await accepted(addObservation(scope, v7(), entry));
  expect((await observation(scope, id))?.amount).toBeNull();
});

test("the same create again is repeated, other content is a conflict, a deleted one stays deleted", async () => {
  const id = v7();
  await accepted(addObservation(scope, id, seen()));
  expect(await addObservation(scope, id, seen())).toMatchObject({ ok: true, repeated: true });
  expect(await addObservation(scope, id, seen({ amount: "1" }))).toMatchObject({
    ok: false,
    why: "conflict",
  });
  await accepted(deleteObservation(scope, id));
  expect(await addObservation(scope, id, seen())).toMatchObject({ ok: true, repeated: true });
  expect((await observation(scope, id))?.deletedAt).not.toBeNull();
});

test("a day ahead counts as today, two days ahead are refused, 1900 too", async () => {
  const tomorrow = { ...seen(), seenOn: plusDays(today, 1) };
  expect(await accepted(addObservation(scope, v7(), tomorrow))).toMatchObject({ seenOn: today });
  expect(await faultsIn(addObservation(scope, v7(), { ...seen(), seenOn: plusDays(today, 2) }))).toEqual([
    "seenOn: day-ahead",
  ]);
  expect(await faultsIn(addObservation(scope, v7(), { ...seen(), seenOn: localDate("1900-01-01") }))).toEqual(
    ["seenOn: day-too-early"],
  );
});

test("every fault of a sighting is named", async () => {
  const wrong = { ...seen({ taxRegion: "ZZ-1" }), materialId: v7(), storeId: v7() };
  expect(await faultsIn(addObservation(scope, v7(), wrong))).toEqual([
    "materialId: not-there",
    "storeId: not-there",
    "taxRegion: unknown-region",
  ]);
  const unreadable = seen({ per: { quantity: "1", unit: "pound" } });
  expect(await faultsIn(addObservation(scope, v7(), unreadable))).toEqual(["per.unit: unit-not-convertible"]);
});

test("an archived store takes no new prices", async () => {
  const other = await storedJob(scope);
  await accepted(archiveStore(scope, other.store.id));
  const entry = someObservationEntry(other.material.id, other.store.id, today);
  expect(await faultsIn(addObservation(scope, v7(), entry))).toEqual(["storeId: archived"]);
});

test("in a list one bad row does not hide the others, and each bad row says why", async () => {
  const [good, alsoGood, known, ahead, both] = [v7(), v7(), v7(), v7(), v7()];
  await accepted(addObservation(scope, known, seen()));
  const answer = await addObservations(scope, [
    { id: good, entry: seen() },
    { id: ahead, entry: { ...seen(), seenOn: plusDays(today, 5) } },
    { id: known, entry: seen({ amount: "5" }) },
    { id: known, entry: seen() },
    { id: both, entry: { ...seen(), storeId: v7(), materialId: v7() } },
    { id: alsoGood, entry: seen({ amount: "40.00" }) },
    { id: alsoGood, entry: seen({ amount: "40.00" }) },
    { id: alsoGood, entry: seen({ amount: "40.01" }) },
  ]);
  expect(answer.accepted).toEqual([good, known, alsoGood, alsoGood]);
  expect(answer.rejected.map(({ id, why, faults }) => [id, why, ...faults.map(({ path }) => path)])).toEqual([
    [ahead, "faults", "seenOn"],
    [known, "conflict"],
    [both, "faults", "materialId", "storeId"],
    [alsoGood, "conflict"],
  ]);
  expect((await observation(scope, alsoGood))?.amount?.amount).toEqual(decimal("40.00"));
  expect(await observation(scope, ahead)).toBeNull();
});

test("a list of thousands is stored in the order sent", async () => {
  const other = await storedJob(scope);
  const sent = Array.from({ length: 3000 }, (_, n) => ({
    id: v7(),
    entry: someObservationEntry(other.material.id, other.store.id, today, { amount: `${n + 1}` }),
  }));
  expect((await addObservations(scope, sent)).rejected).toEqual([]);
  const history = await historyOf(scope, other.material.id, today);
  expect(history.map(({ id }) => id)).toEqual(sent.map(({ id }) => id));
});

test("a correction keeps what was said before, who corrected it and why", async () => {
  const { id } = await accepted(addObservation(scope, v7(), seen({ note: "tag" })));
  const before = await observation(scope, id);
  await accepted(correctObservation(scope, id, ...correction({ amount: "14.98", note: null })));
  await accepted(
    correctObservation(scope, id, ...correction({ terms: "special", reason: "it was on sale" })),
  );
  const now = await observation(scope, id);
  expect(now).toMatchObject({ terms: "special", note: null, corrections: 2 });
  expect(now?.amount).toEqual({ amount: decimal("14.98"), currency: "CAD" });
  const earlier = await correctionsOf(scope, id);
  expect(earlier.map(({ actor, reason }) => [actor, reason])).toEqual([
    ["owner", "misread"],
    ["owner", "it was on sale"],
  ]);
  const { deletedAt: _, corrections: __, ...asSeen } = before ?? {};
  expect(earlier[0]?.earlier).toEqual(asSeen);
  expect(earlier[1]?.earlier).toMatchObject({ terms: "shelf", amount: { amount: decimal("14.98") } });
});

test("a correction that changes nothing is repeated and leaves no trace", async () => {
  const { id } = await accepted(addObservation(scope, v7(), seen()));
  const same = await correctObservation(scope, id, ...correction({ amount: "41.98" }));
  expect(same).toMatchObject({ ok: true, repeated: true });
  expect(await correctionsOf(scope, id)).toEqual([]);
});

test("a correction is held to the rules of a sighting", async () => {
  const { id } = await accepted(addObservation(scope, v7(), seen()));
  expect(await faultsIn(correctObservation(scope, id, ...correction({ terms: "quote" })))).toEqual([
    "until: until-required",
  ]);
  const ahead = correction({ seenOn: plusDays(today, 3) });
  expect(await faultsIn(correctObservation(scope, id, ...ahead))).toEqual(["seenOn: day-ahead"]);
  expect((await observation(scope, id))?.corrections).toBe(0);
});

test("after a correction the create as first received is still repeated", async () => {
  const id = v7();
  await accepted(addObservation(scope, id, seen()));
  await accepted(correctObservation(scope, id, ...correction({ amount: "2" })));
  expect(await addObservation(scope, id, seen())).toMatchObject({
    ok: true,
    repeated: true,
    value: { amount: { amount: decimal("2") } },
  });
  expect(await addObservation(scope, id, seen({ amount: "2" }))).toMatchObject({ why: "conflict" });
});

test("two correcting different figures of one sighting at once: both count", async () => {
  for (let round = 0; round < 5; round += 1) {
    const { id } = await accepted(addObservation(scope, v7(), seen()));
    const patches = [{ amount: "7" }, { note: "blue tag" }, { maxQuantity: "3" }, { taxIncluded: true }];
    await Promise.all(patches.map((patch) => correctObservation(scope, id, ...correction(patch))));
    expect(await observation(scope, id)).toMatchObject({
      amount: { amount: decimal("7") },
      note: "blue tag",
      maxQuantity: decimal("3"),
      taxIncluded: true,
    });
  }
});

test("corrections of one sighting at once are all kept", async () => {
  const { id } = await accepted(addObservation(scope, v7(), seen()));
  const amounts = ["1", "2", "3", "4", "5", "6"];
  await Promise.all(amounts.map((amount) => correctObservation(scope, id, ...correction({ amount }))));
  const earlier = await correctionsOf(scope, id);
  const said = [...earlier.map((one) => one.earlier.amount), (await observation(scope, id))?.amount];
  expect(said.map((amount) => amount?.amount.toFixed()).sort()).toEqual([...amounts, "41.98"].sort());
});

test("a deleted sighting counts on no day, is not corrected, and comes back whole", async () => {
  const other = await storedJob(scope);
  const entry = someObservationEntry(other.material.id, other.store.id, today);
  const { id } = await accepted(addObservation(scope, v7(), entry));
  await accepted(deleteObservation(scope, id));
  expect(await historyOf(scope, other.material.id, today)).toEqual([]);
  expect(await recentObservations(scope, [other.material.id], today)).toEqual([]);
  expect((await observationsOf(scope, other.material.id)).items).toEqual([]);
  const all = await observationsOf(scope, other.material.id, { includeDeleted: true });
  expect(all.items.map((one) => one.id)).toEqual([id]);
  expect(await correctObservation(scope, id, ...correction({ amount: "2" }))).toEqual({
    ok: false,
    why: "not-there",
  });
  expect(await deleteObservation(scope, id)).toMatchObject({ ok: true, repeated: true });
  await accepted(undeleteObservation(scope, id));
  expect(await historyOf(scope, other.material.id, today)).toEqual([{ ...entry, id }]);
});

test("a list is paged without a gap or a double", async () => {
  const other = await storedJob(scope);
  const sent = Array.from({ length: 7 }, (_, n) => ({
    id: v7(),
    entry: someObservationEntry(other.material.id, other.store.id, plusDays(today, -Math.floor(n / 3))),
  }));
  await addObservations(scope, sent);
  const found: string[] = [];
  let cursor: string | null = null;
  do {
    const page = await observationsOf(scope, other.material.id, { limit: 3, cursor });
    expect(page.items.length).toBeLessThanOrEqual(3);
    found.push(...page.items.map(({ id }) => id));
    cursor = page.next;
  } while (cursor !== null);
  expect([...found].sort()).toEqual(sent.map(({ id }) => id).sort());
});

test("history up to a day knows nothing seen later", async () => {
  const other = await storedJob(scope);
  for (const ago of [0, 5, 10]) {
    const entry = someObservationEntry(other.material.id, other.store.id, plusDays(today, -ago));
    await accepted(addObservation(scope, v7(), entry));
  }
  const until = plusDays(today, -5);
  const history = await historyOf(scope, other.material.id, until);
  expect(history.map(({ seenOn }) => seenOn)).toEqual([plusDays(today, -10), until]);
});
