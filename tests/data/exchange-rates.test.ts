import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import {
  addExchangeRate,
  addExchangeRates,
  changeExchangeRate,
  exchangeRates,
} from "../../lib/data/exchange-rates.ts";
import { decimal } from "../../lib/decimal.ts";
import { exchangeRateEntry } from "../../lib/rates/exchange-rate-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, ownerScope } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const { today } = scope;
const some = (source: string, ago: number, rate = "1.372512345678") =>
  exchangeRateEntry.parse({ date: plusDays(today, -ago), base: "USD", quote: "CAD", rate, source });

test("a rate comes back with all its digits", async () => {
  const entry = some("digits", 3);
  await accepted(addExchangeRate(scope, entry));
  expect((await exchangeRates(scope)).filter(({ source }) => source === "digits")).toEqual([entry]);
});

test("the same rate again is repeated, another for its day and source a conflict", async () => {
  await accepted(addExchangeRate(scope, some("twice", 3)));
  expect(await addExchangeRate(scope, some("twice", 3))).toMatchObject({ ok: true, repeated: true });
  expect(await addExchangeRate(scope, some("twice", 3, "1.4"))).toMatchObject({
    why: "conflict",
    stored: { rate: decimal("1.372512345678") },
  });
});

test("a rate typed wrong is put right, and what it was stays in the change log", async () => {
  await accepted(addExchangeRate(scope, some("wrong", 2, "13.7")));
  await accepted(changeExchangeRate(scope, some("wrong", 2, "1.37")));
  const { items } = await changesOf(scope);
  expect(items[0]).toMatchObject({
    noun: "exchange_rate",
    action: "changed",
    before: { rate: "13.7" },
    after: { rate: "1.37" },
  });
  expect(await changeExchangeRate(scope, some("wrong", 9))).toEqual({ ok: false, why: "not-there" });
});

test("a rate of a day to come is refused", async () => {
  expect(await faultsIn(addExchangeRate(scope, some("ahead", -2)))).toEqual(["date: day-ahead"]);
});

test("in a list each rate stands alone", async () => {
  await accepted(addExchangeRate(scope, some("list", 5, "1.5")));
  const answer = await addExchangeRates(scope, [
    some("list", 4),
    some("list", -4),
    some("list", 5, "1.6"),
    some("list", 5, "1.5"),
    some("list", 3),
  ]);
  expect(answer).toMatchObject({ added: 2, repeated: 1 });
  expect(answer.rejected.map(({ index, why }) => [index, why])).toEqual([
    [1, "faults"],
    [2, "conflict"],
  ]);
  const stored = (await exchangeRates(scope)).filter(({ source }) => source === "list");
  expect(stored.map(({ on }) => on)).toEqual([5, 4, 3].map((ago) => plusDays(today, -ago)));
});
