import { describe, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../../lib/calendar/local-date.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { placed, type ReminderMark, standing } from "../../../lib/reminders/marks.ts";
import { reminderOf } from "../../../lib/reminders/reminder.ts";
import { markEntry } from "../../../lib/reminders/reminder-entry.ts";
import { TODAY } from "../../support/price-example.ts";

const one = reminderOf(["lot"], {
  kind: "return-by",
  on: plusDays(TODAY, 2),
  materialId: "sheet",
  unit: "sheet",
});
const mark = (kind: ReminderMark["kind"], until: LocalDate | null = null): ReminderMark => ({
  id: "mark",
  key: one.key,
  kind,
  until,
  at: "2026-03-01T10:00:00Z",
});
const stands = (marks: readonly ReminderMark[], day = TODAY) => standing([one], marks, day).length;

describe("a reminder", () => {
  test("stands until something is done with it", () => {
    expect(stands([])).toBe(1);
    expect(stands([{ ...mark("done"), key: "another" }])).toBe(1);
  });

  test("that is done stays away, on the same day and on every later one", () => {
    expect([0, 1, 30].map((days) => stands([mark("done")], plusDays(TODAY, days)))).toEqual([0, 0, 0]);
  });

  test("that is put off comes back on its day", () => {
    const off = [mark("snoozed", plusDays(TODAY, 3))];
    expect([0, 2, 3, 4].map((days) => stands(off, plusDays(TODAY, days)))).toEqual([0, 0, 1, 1]);
  });
});

describe("in a calendar a reminder", () => {
  const days = (marks: readonly ReminderMark[]) => placed([one], marks).map(({ on }) => on);

  test("stands on its own day, or where it was put off to when that is later", () => {
    expect(days([])).toEqual([plusDays(TODAY, 2)]);
    expect(days([mark("snoozed", plusDays(TODAY, 1))])).toEqual([plusDays(TODAY, 2)]);
    expect(days([mark("snoozed", plusDays(TODAY, 9))])).toEqual([plusDays(TODAY, 9)]);
  });

  test("that is done is not there", () => {
    expect(days([mark("done")])).toEqual([]);
  });
});

describe("what is done with a reminder", () => {
  const KEY = "return-by.0190f3c4-0000-7000-8000-000000000000.2026-03-04";
  const faults = (entry: unknown) => {
    const read = markEntry.safeParse(entry);
    return read.success ? [] : faultsOf(read.error).map(({ path, code }) => `${path}: ${code}`);
  };

  test("names a reminder by its key, and a day when it is put off", () => {
    expect(faults({ key: KEY, kind: "done" })).toEqual([]);
    expect(faults({ key: KEY, kind: "snoozed", until: "2026-03-05" })).toEqual([]);
  });

  test("is refused without a day to put off to, of a key that is none, of a kind that is none", () => {
    expect(faults({ key: KEY, kind: "snoozed" })).toEqual(["until: missing"]);
    expect(faults({ key: "return-by.x", kind: "done" })).toEqual(["key: not-an-id"]);
    expect(faults({ key: KEY, kind: "lost", until: "soon" })).toEqual([
      "kind: unknown-choice",
      "until: not-a-day",
    ]);
  });
});
