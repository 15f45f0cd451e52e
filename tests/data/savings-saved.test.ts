import { v7 } from "uuid";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { addLot } from "../../lib/data/lots.ts";
import { addObservation, correctObservation } from "../../lib/data/observations.ts";
import { addRequirement } from "../../lib/data/requirements.ts";
import { savingsFactsOfLot, savingsReportFacts } from "../../lib/data/savings-facts.ts";
import { deleteReport, keepReport, savedReport, savedReports } from "../../lib/data/savings-saved.ts";
import { addStockEvent } from "../../lib/data/stock-events.ts";
import { addStore } from "../../lib/data/stores.ts";
import { decimal } from "../../lib/decimal.ts";
import { changedSince } from "../../lib/savings/changed-since.ts";
import { reportContent } from "../../lib/savings/report-content.ts";
import { rowKey } from "../../lib/savings/row-key.ts";
import { whySaving } from "../../lib/savings/why-saving.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";
import { freshDatabase } from "../support/database.ts";
import {
  accepted,
  otherScope,
  ownerScope,
  someLotEntry,
  someObservationEntry,
  someRequirementEntry,
  someStoreEntry,
  storedJob,
} from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const asked = { from: null, until: null, projectId: null, materialId: null, currency: null, day: today };

const job = await storedJob(scope);
const store = await accepted(addStore(scope, v7(), someStoreEntry()));
const need = await accepted(
  addRequirement(scope, job.project.id, v7(), someRequirementEntry(job.material.id, plusDays(today, -60))),
);
const lot = await accepted(addLot(scope, v7(), someLotEntry(job.material.id, plusDays(today, -50))));
const seen = await accepted(
  addObservation(scope, v7(), someObservationEntry(job.material.id, store.id, plusDays(today, -3))),
);
const draw = stockEventEntry.parse({
  kind: "drawn",
  quantity: "2",
  on: plusDays(today, -2),
  requirementId: need.id,
});
await accepted(addStockEvent(scope, lot.id, v7(), draw));
const live = async () => reportContent(asked, await savingsReportFacts(scope, null, asked));

test("a kept report is what the report was, digit for digit, with its sources and receipts", async () => {
  const now = await live();
  const kept = await accepted(keepReport(scope, v7(), asked));
  expect(kept.content).toEqual(now);
  expect(kept.content.rows[0]?.saving?.amount.toFixed()).toBeDefined();
  expect(kept.content.sources.map(({ observationId }) => observationId)).toEqual([seen.id]);
  expect(kept.content.lots.map(({ id }) => id)).toEqual([lot.id]);
  expect(await savedReport(scope, kept.id)).toEqual(kept);
});

test("kept twice under one id it is there once, and another question under it is refused", async () => {
  const id = v7();
  const first = await accepted(keepReport(scope, id, asked));
  expect(await keepReport(scope, id, asked)).toMatchObject({ ok: true, repeated: true });
  expect(await keepReport(scope, id, { ...asked, from: today })).toMatchObject({
    ok: false,
    why: "conflict",
  });
  expect((await savedReports(scope)).filter((one) => one.id === id)).toEqual([
    { id, at: first.at, madeOn: today, figures: first.figures, deletedAt: null, asked },
  ]);
});

test("a correction leaves a kept report as it was, and says what is other now", async () => {
  const kept = await accepted(keepReport(scope, v7(), asked));
  expect(changedSince(kept.content, await live()).rows).toEqual([]);
  const was = kept.content.rows[0]?.goingAtDraw;
  await accepted(correctObservation(scope, seen.id, { amount: decimal("99") }, "misread"));
  expect((await savedReport(scope, kept.id))?.content.rows[0]?.goingAtDraw).toEqual(was);
  const since = changedSince(kept.content, await live());
  expect(since.rows.map(({ key }) => key)).toEqual(kept.content.rows.map(rowKey));
  expect(since.before).toEqual(kept.figures);
  expect(since.after.realised).not.toBe(since.before.realised);
});

test("a deleted report leaves the list and comes back with undo", async () => {
  const { id } = await accepted(keepReport(scope, v7(), asked));
  const listed = async () => (await savedReports(scope)).some((one) => one.id === id);
  expect((await accepted(deleteReport(scope, id, true))).deletedAt).not.toBe(null);
  expect(await listed()).toBe(false);
  expect(await deleteReport(scope, id, true)).toMatchObject({ repeated: true });
  await accepted(deleteReport(scope, id, false));
  expect(await listed()).toBe(true);
});

test("another workspace sees none of them", async () => {
  const { id } = await accepted(keepReport(scope, v7(), asked));
  const other = await otherScope();
  expect([await savedReport(other, id), await savedReports(other)]).toEqual([null, []]);
  expect(await deleteReport(other, id, true)).toEqual({ ok: false, why: "not-there" });
});

test("the facts of one lot explain its rows as the whole report has them", async () => {
  const facts = await savingsFactsOfLot(scope, lot.id, today);
  for (const row of (await live()).rows) expect(whySaving(rowKey(row), today, facts)?.row).toEqual(row);
  expect(whySaving(`${lot.id}~${v7()}`, today, facts)).toBe(null);
  expect((await savingsFactsOfLot(scope, v7(), today)).lots).toEqual([]);
});
