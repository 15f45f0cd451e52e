import * as fc from "fast-check";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { placed, type ReminderMark, standing } from "../../lib/reminders/marks.ts";
import type { Wishes } from "../../lib/reminders/reminder.ts";
import { reminders } from "../../lib/reminders/reminders.ts";
import { law } from "../support/law.ts";
import { TODAY } from "../support/price-example.ts";
import { someObservation, someWorkspace } from "../support/random-workspace.ts";
import { cad } from "../support/stock-example.ts";

const WISHES: Wishes = {
  wanted: new Map([
    ["sheet", cad(25)],
    ["board", cad(12)],
  ]),
  lapseDays: 10,
};
const anyDay = fc.integer({ min: -60, max: 40 }).map((days) => plusDays(TODAY, days));
const keys = (all: readonly { key: string }[]) => all.map(({ key }) => key);

test("no reminder stands twice", () => {
  let most = 0;
  law(
    fc.property(someWorkspace, anyDay, (facts, day) => {
      const all = keys(reminders(day, facts, WISHES));
      most = Math.max(most, all.length);
      expect(new Set(all).size).toBe(all.length);
    }),
  );
  expect(most).toBeGreaterThan(3);
});

test("the order in which prices were entered changes nothing", () => {
  law(
    fc.property(someWorkspace, anyDay, (facts, day) => {
      const turned = { ...facts, observations: [...facts.observations].reverse() };
      expect(keys(reminders(day, turned, WISHES))).toEqual(keys(reminders(day, facts, WISHES)));
    }),
  );
});

test("a price seen after a day changes no reminder as of that day", () => {
  // Not one of tomorrow: seen past midnight in another zone, it counts as today (R11).
  const later = someObservation(["sheet", "board"], { min: 0, max: 59 });
  law(
    fc.property(someWorkspace, later, (facts, seen) => {
      const day = plusDays(seen.seenOn, -1);
      const since = { ...facts, observations: [...facts.observations, seen] };
      expect(reminders(day, since, WISHES)).toEqual(reminders(day, facts, WISHES));
    }),
  );
});

test("what is done does not return the same day, nor in the calendar; all else stays", () => {
  law(
    fc.property(someWorkspace, fc.nat(), (facts, chosen) => {
      const all = reminders(TODAY, facts, WISHES);
      const one = all[chosen % Math.max(all.length, 1)];
      if (one === undefined) return;
      const mark: ReminderMark = {
        id: "m",
        key: one.key,
        kind: "done",
        until: null,
        at: "2026-03-02T10:00:00Z",
      };
      const rest = keys(all.filter((other) => other !== one));
      expect(keys(standing(reminders(TODAY, facts, WISHES), [mark], TODAY))).toEqual(rest);
      expect(placed(all, [mark]).map(({ reminder }) => reminder.key)).toEqual(rest);
    }),
  );
});
