import { v7 } from "uuid";
import { expect, test } from "vitest";
import { addExchangeRate, exchangeRates } from "../../lib/data/exchange-rates.ts";
import { ratesFated, takeRates } from "../../lib/data/rate-files.ts";
import { setFileUndone, takenFiles } from "../../lib/data/taken-files.ts";
import { exchangeRateEntry } from "../../lib/rates/exchange-rate-entry.ts";
import { ratesFile } from "../../lib/rates/rates-file.ts";
import { VALET_CSV } from "../fixtures/rate-files.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, otherScope, ownerScope } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();
const file = (source: string, text = VALET_CSV) => ({
  name: "rates.csv",
  source,
  readings: ratesFile(text, { currencies: null }).readings,
});
const fatesOf = (fates: readonly { fate: string }[]) => fates.map(({ fate }) => fate).join(" ");
const storedOf = async (source: string) =>
  (await exchangeRates(scope))
    .filter((rate) => rate.source === source)
    .map(({ on, base, rate }) => `${on} ${base} ${rate}`);
const typed = (source: string, rate: string) =>
  exchangeRateEntry.parse({ date: "2022-06-17", base: "USD", quote: "CAD", rate, source });

test("a preview writes nothing, taking in writes all, and the same file again adds nothing", async () => {
  expect(fatesOf(await ratesFated(scope, file("twice")))).toBe("new new new new new new");
  expect(await storedOf("twice")).toEqual([]);
  expect((await takeRates(scope, v7(), file("twice"))).added).toBe(6);
  expect(await storedOf("twice")).toContain("2022-06-17 USD 1.3035");
  const again = await takeRates(scope, v7(), file("twice"));
  expect([again.added, fatesOf(again.fates)]).toEqual([0, "same same same same same same"]);
  expect((await takenFiles(scope, "rates")).filter(({ source }) => source === "twice")).toHaveLength(1);
});

test("a rate that contradicts a stored one is left as it is, the others are taken", async () => {
  await accepted(addExchangeRate(scope, typed("against", "1.5")));
  const { added, fates } = await takeRates(scope, v7(), file("against"));
  expect([added, fatesOf(fates)]).toEqual([5, "new new new new new conflict"]);
  expect(await storedOf("against")).toContain("2022-06-17 USD 1.5");
});

test("a file is taken back and brought back as one; taken back, its rates are no rates", async () => {
  const id = v7();
  await takeRates(scope, id, file("undone"));
  expect(await setFileUndone(scope, id, true)).toBe(true);
  expect(await storedOf("undone")).toEqual([]);
  expect(await setFileUndone(scope, id, false)).toBe(true);
  expect(await storedOf("undone")).toHaveLength(6);
  expect(await setFileUndone(scope, v7(), true)).toBe(false);
});

test("after a file was taken back, another rate may take its place, and stays when the file comes back", async () => {
  const id = v7();
  await takeRates(scope, id, file("replaced"));
  await setFileUndone(scope, id, true);
  await accepted(addExchangeRate(scope, typed("replaced", "1.7")));
  expect(await storedOf("replaced")).toEqual(["2022-06-17 USD 1.7"]);
  expect((await takeRates(scope, v7(), file("replaced"))).added).toBe(5);
  await setFileUndone(scope, id, false);
  expect(await storedOf("replaced")).toHaveLength(6);
  expect(await storedOf("replaced")).toContain("2022-06-17 USD 1.7");
});

test("sent twice under one id it is taken once", async () => {
  const id = v7();
  const answers = await Promise.all([
    takeRates(scope, id, file("sent twice")),
    takeRates(scope, id, file("sent twice")),
  ]);
  expect(answers.reduce((sum, { added }) => sum + added, 0)).toBe(6);
});

test("the same file sent twice at one moment is noted once", async () => {
  const answers = await Promise.all([
    takeRates(scope, v7(), file("at one moment")),
    takeRates(scope, v7(), file("at one moment")),
  ]);
  expect(answers.map(({ added }) => added).sort()).toEqual([0, 6]);
  const noted = (await takenFiles(scope, "rates")).filter(({ source }) => source === "at one moment");
  expect(noted).toHaveLength(1);
});

test("another workspace sees neither the rates nor the file, and cannot take it back", async () => {
  const id = v7();
  await takeRates(scope, id, file("mine"));
  const other = await otherScope();
  expect(await exchangeRates(other)).toEqual([]);
  expect(await takenFiles(other, "rates")).toEqual([]);
  expect(await setFileUndone(other, id, true)).toBe(false);
});
