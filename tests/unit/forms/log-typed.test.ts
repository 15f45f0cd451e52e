import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { entryOfTyped, faultsOfTyped, type TypedPrice } from "../../../app/log/check-price.ts";
import { typedPrice } from "../../../app/log/typed.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { TERMS } from "../../../lib/prices/observation.ts";
import { observationEntry } from "../../../lib/prices/observation-entry.ts";
import { law } from "../../support/law.ts";
import { TODAY } from "../../support/price-example.ts";

const CHOSEN = {
  materialId: "0192f0c0-0000-7000-8000-000000000001",
  storeId: "0192f0c0-0000-7000-8000-000000000002",
  unit: "sheet",
  currency: "CAD",
} as const;

function typed(given: Readonly<Record<string, string>>): TypedPrice {
  const data = new FormData();
  const fields = { terms: "special", amount: "10.00", "per.quantity": "1", seenOn: TODAY, ...given };
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return typedPrice(data, CHOSEN, "en-CA");
}
const kept = (given: Readonly<Record<string, string>>) => entryOfTyped(typed(given), "Delivery");
const faults = (given: Readonly<Record<string, string>>) => faultsOfTyped(typed(given), TODAY);

describe("buy so many, get so many free", () => {
  test("is kept as the price of a full pack", () => {
    expect(kept({ paidFor: "2", freeWith: "1" })).toMatchObject({
      terms: "special",
      amount: "20",
      per: { quantity: "3", unit: "sheet" },
      packSize: "3",
    });
  });

  test("is a special even where shelf was left as the terms: the price of one stays in force beside it", () => {
    expect(kept({ paidFor: "2", freeWith: "1", terms: "shelf" })).toMatchObject({ terms: "special" });
    expect(kept({ paidFor: "2", freeWith: "1", terms: "clearance" })).toMatchObject({ terms: "clearance" });
  });

  test("in other packs keeps those", () => {
    expect(kept({ paidFor: "2", freeWith: "1", packSize: "6" })).toMatchObject({
      amount: "20",
      packSize: "6",
    });
  });

  test("not typed changes nothing, and none left has no price", () => {
    expect(kept({})).toMatchObject({ amount: "10", per: { quantity: "1" }, packSize: undefined });
    expect(kept({ terms: "none-left", paidFor: "2" })).not.toHaveProperty("amount");
    expect(faults({ terms: "none-left", paidFor: "2", amount: "x" })).toEqual([]);
  });

  test.each([
    [{ paidFor: "2" }, "freeWith", "missing"],
    [{ freeWith: "1" }, "paidFor", "missing"],
    [{ paidFor: "2", freeWith: "0" }, "freeWith", "not-positive"],
    [{ paidFor: "two", freeWith: "1" }, "paidFor", "not-a-number"],
  ] as const)("half typed or wrong (%j) is refused at its field", (given, path, code) => {
    expect(faults(given)).toEqual([{ path, code }]);
  });
});

test("a delivery charge is kept as a charge per order, and none where none is typed", () => {
  expect(kept({ "fees.0.amount": "85" })).toMatchObject({
    fees: [{ name: "Delivery", amount: "85", basis: "order", taxable: true }],
  });
  expect(kept({})).toMatchObject({ fees: [] });
});

test("a day more than one ahead is still to come; one ahead may be a late evening", () => {
  expect(faults({ seenOn: "2026-03-03" })).toEqual([]);
  expect(faults({ seenOn: "2026-03-04" })).toEqual([{ path: "seenOn", code: "day-ahead" }]);
});

const amounts = fc.constantFrom("", "10", "0", "-5", "1.2.3", "1e30", "4.1234567", "9999999999", "3", "7.5");
const days = fc.constantFrom("", "2026-02-30", "1900-01-01", "2026-01-05", "2026-02-01");
const anything = fc.record({
  terms: fc.constantFrom(...TERMS),
  amount: amounts,
  "per.quantity": amounts,
  seenOn: days,
  from: days,
  until: days,
  minQuantity: amounts,
  maxQuantity: amounts,
  packSize: amounts,
  "fees.0.amount": amounts,
});

test("the form refuses what the books refuse, at the same fields and for the same reasons", () => {
  law(
    fc.property(anything, (given) => {
      const own = faults(given).map(({ path, code }) => `${path} ${code}`);
      // A charge is compared only where the rest is good: its entry is made from amounts that can be read.
      const read = observationEntry.safeParse(sentAsTyped(typed(given)));
      const theirs = read.success ? [] : faultsOf(read.error).map(({ path, code }) => `${path} ${code}`);
      expect(new Set(own)).toEqual(new Set(theirs));
    }),
    { numRuns: 2000 },
  );
});

/** The entry with its amounts as typed, also those that are none, for the books to find fault with. */
function sentAsTyped(price: TypedPrice) {
  const amounts = { amount: undefined, per: undefined };
  const entry = entryOfTyped({ ...price, ...amounts }, "Delivery");
  if (!("per" in entry)) return entry;
  return { ...entry, amount: price.amount, per: { quantity: price.per ?? "1", unit: price.unit } };
}
