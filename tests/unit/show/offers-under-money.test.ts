import { expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import {
  aboutToLapse,
  leanings,
  leaningText,
  staleUnderMoney,
} from "../../../lib/show/offers-under-money.ts";
import { DAY, exposureOf, line, offer, take } from "../../support/exposure-example.ts";

const week = offer({ observationId: "week", lapsesOn: localDate("2026-03-09") });
const tomorrow = offer({ observationId: "tomorrow", lapsesOn: localDate("2026-03-03") });
const later = offer({ observationId: "later", lapsesOn: localDate("2026-03-17") });
const stale = offer({ observationId: "stale", stale: true, ageDays: 41 });

test("an offer several lines lean on is one row, with their quantities and money together", () => {
  const found = leanings(
    exposureOf([
      line({ takes: [take("10", week)] }),
      line({ requirementId: "b", projectId: "kitchen", takes: [take("2", week)] }),
      line({ requirementId: "c", takes: [take("1", week)] }),
    ]),
  );
  expect(found).toHaveLength(1);
  expect(found[0]?.quantity.toFixed()).toBe("13");
  // 13 x 34.15
  expect(found[0]?.money.amount.toFixed(2)).toBe("443.95");
  expect(found[0]?.projectIds).toEqual(["workshop", "kitchen"]);
});

test("what lapses within two weeks is listed, the first to lapse first; what holds on is not", () => {
  const all = leanings(
    exposureOf([line({ takes: [take("1", week), take("1", later), take("1", tomorrow), take("1")] })]),
  );
  // 2026-03-17 is 15 days ahead
  expect(aboutToLapse(all, DAY).map(({ offer: found }) => found.observationId)).toEqual(["tomorrow", "week"]);
});

test("stale prices are listed by the money on them, a stale exchange rate counts too", () => {
  const rate = offer({ observationId: "rate", staleRate: true });
  const all = leanings(exposureOf([line({ takes: [take("1", stale), take("5", rate), take("9")] })]));
  expect(staleUnderMoney(all).map(({ offer: found }) => found.observationId)).toEqual(["rate", "stale"]);
});

test("a leaning says how many days are left, and nothing where it holds until a newer price", () => {
  const [lapses, holds] = leanings(exposureOf([line({ takes: [take("2", week), take("1")] })])).map((found) =>
    leaningText(found, DAY, "en-CA"),
  );
  expect(lapses).toMatchObject({ daysLeft: 7, each: "34.15", money: "68.30", quantity: "2" });
  expect([holds?.lapsesOn, holds?.daysLeft]).toEqual([null, null]);
});
