import { expect, test } from "vitest";
import { rowKey } from "../../../lib/savings/row-key.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { whySaving } from "../../../lib/savings/why-saving.ts";
import { whySteps } from "../../../lib/show/savings-why.ts";
import { TODAY } from "../../support/price-example.ts";
import { REPORT_FACTS } from "../../support/report-example.ts";

function stepsOf(kind: string) {
  const row = savings(null, null, TODAY, REPORT_FACTS).rows.find((one) => one.kind === kind);
  const why = row === undefined ? null : whySaving(rowKey(row), TODAY, REPORT_FACTS);
  return why === null ? [] : whySteps(why, "en-CA");
}

test("the sum of what was used is value, cost and carrying, then what it is made of", () => {
  expect(stepsOf("drawn").map(({ step, amount, part }) => [step, amount, part])).toEqual([
    ["valueUse", "+1,587.20", false],
    ["cost", "-1,300.45", false],
    ["carrying", "-8.98", false],
    ["saving", "+277.77", false],
    ["valueBought", "+1,486.45", true],
    ["discount", "+186.00", true],
    ["timing", "+100.75", true],
    ["strict", "+57.67", true],
  ]);
});

test("each line names the figures it was reckoned from", () => {
  const [value, cost] = stepsOf("drawn");
  expect(value?.values).toMatchObject({ price: "51.20", quantity: "31", condition: "one" });
  expect(cost?.values).toEqual({ charged: "31", quantity: "52", cost: "2,181.40" });
});

test("what was sold has what came in, and no going price", () => {
  expect(stepsOf("sold").map(({ step, amount }) => [step, amount])).toEqual([
    ["received", "+141.00"],
    ["cost", "-125.85"],
    ["carrying", "-1.11"],
    ["saving", "+14.04"],
  ]);
});
