import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { feedFile } from "../../../app/calendar/_feed/feed-file.ts";
import { localDate } from "../../../lib/calendar/local-date.ts";
import type { Placed } from "../../../lib/reminders/marks.ts";
import { reminderOf } from "../../../lib/reminders/reminder.ts";

// Read by ical.js, which shares no code with what writes it.
const on = localDate("2026-12-31");
const reminder = reminderOf(["lot"], { kind: "return-by", on, materialId: "sheet", unit: "sheet" });
const own: Placed = { reminder, on, at: null };
const SENTENCE =
  "Épinette, 4 x 8; the last day to hand back 12 sheets, said at some length, so that the line folds\\n";

const file = (all: readonly Placed[]) =>
  feedFile(all, {
    name: "Dunnage: ours",
    timeZone: "America/Halifax",
    sentence: () => SENTENCE,
    address: () => "http://localhost/stock/lot",
  });
const calendar = (all: readonly Placed[]) => new ICAL.Component(ICAL.parse(file(all)));
const events = (all: readonly Placed[]) =>
  calendar(all)
    .getAllSubcomponents("vevent")
    .map((one) => new ICAL.Event(one));

describe("the calendar file", () => {
  test("has one whole-day event for each reminder, over the end of a year too", () => {
    const [event, ...more] = events([own]);
    expect(more).toEqual([]);
    expect([event?.startDate.isDate, event?.startDate.toString(), event?.endDate.toString()]).toEqual([
      true,
      "2026-12-31",
      "2027-01-01",
    ]);
  });

  test("names an event by the reminder's key, and says its sentence whole", () => {
    const [event] = events([own]);
    expect([event?.uid, event?.summary]).toEqual(["return-by.lot.2026-12-31", SENTENCE]);
    expect(String(event?.component.getFirstPropertyValue("url"))).toBe("http://localhost/stock/lot");
  });

  test("is the same to the last character for the same reminders", () => {
    expect(file([own])).toBe(file([own]));
    expect(String(events([own])[0]?.component.getFirstPropertyValue("dtstamp"))).toBe("2026-12-31T00:00:00Z");
  });

  test("has the moment a reminder was put off, and the day it was put off to", () => {
    const [event] = events([{ reminder, on: localDate("2027-01-05"), at: "2026-12-30T10:11:12.3-04:00" }]);
    expect(event?.startDate.toString()).toBe("2027-01-05");
    expect(String(event?.component.getFirstPropertyValue("dtstamp"))).toBe("2026-12-30T14:11:12Z");
  });

  test("says whose days they are, and is a calendar without events too", () => {
    const empty = calendar([]);
    expect(empty.getFirstPropertyValue("x-wr-timezone")).toBe("America/Halifax");
    expect(empty.getFirstPropertyValue("version")).toBe("2.0");
    expect(empty.getAllSubcomponents("vevent")).toEqual([]);
  });

  test("ends its lines as RFC 5545, 3.1 wants, none longer than 75 octets", () => {
    const lines = file([own]).split("\r\n");
    expect(lines.join("")).not.toContain("\n");
    expect(lines.filter((line) => Buffer.byteLength(line) > 75)).toEqual([]);
  });
});
