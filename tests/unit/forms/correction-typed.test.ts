import { expect, test } from "vitest";
import { correctionTyped } from "../../../app/materials/correction-typed.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { observationCorrection } from "../../../lib/prices/observation-entry.ts";

const WHOLE = {
  seenOn: "2026-03-02",
  terms: "shelf",
  amount: "31.98",
  currency: "CAD",
  "per.quantity": "1",
  "per.unit": "sheet",
  taxIncluded: "no",
  reason: "misread the tag",
};

function corrected(given: Readonly<Record<string, string>>) {
  const form = new FormData();
  for (const [name, value] of Object.entries({ ...WHOLE, ...given })) form.append(name, value);
  return observationCorrection.safeParse(correctionTyped(form, "en-CA"));
}

function faults(given: Readonly<Record<string, string>>): string[] {
  const read = corrected(given);
  return read.success ? [] : faultsOf(read.error).map(({ path, code }) => `${path} ${code}`);
}

test("a correction filled in whole is accepted, and what is left empty is none", () => {
  expect(corrected({}).data).toMatchObject({ minQuantity: null, until: null, fees: [], note: null });
});

test.each([
  [{ amount: "1.2.3" }, "amount not-a-number"],
  [{ amount: "-5" }, "amount not-positive"],
  [{ amount: "0" }, "amount not-positive"],
  [{ amount: "1e30" }, "amount not-a-number"],
  [{ amount: "9999999999" }, "amount too-large"],
  [{ currency: "XYZ" }, "currency unknown-currency"],
  [{ seenOn: "1900-01-01" }, "seenOn day-too-early"],
  [{ seenOn: "tomorrow" }, "seenOn not-a-day"],
  [{ reason: "" }, "reason missing"],
  [{ "fees.0.name": "Delivery" }, "fees.0.amount missing"],
  [
    { "fees.0.name": "Delivery", "fees.0.amount": "5", "fees.0.percent": "2" },
    "fees.0.amount amount-not-expected",
  ],
])("%o is refused: %s", (given, fault) => {
  expect(faults(given)).toEqual([fault]);
});

test("1,049 is a thousand and forty-nine", () => {
  expect(corrected({ amount: "1,049" }).data?.amount?.toFixed()).toBe("1049");
});

test("none left drops the amount, whatever stands in its field", () => {
  expect(corrected({ terms: "none-left" }).data?.amount).toBeNull();
});

test("a cleared row of fees is no fee", () => {
  expect(
    corrected({ "fees.0.name": "", "fees.0.basis": "order", "fees.0.taxable": "yes" }).data?.fees,
  ).toEqual([]);
});
