import { describe, expect, test } from "vitest";
import { freeTyped, typedPrice, withFree } from "../../../app/log/typed-price.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { freeEntry } from "../../../lib/prices/free-entry.ts";
import { store } from "../../support/price-example.ts";

const near = store("near");

function form(given: Readonly<Record<string, string>>): FormData {
  const data = new FormData();
  const fields = { terms: "special", amount: "10.00", "per.quantity": "1", "per.unit": "sheet", ...given };
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return data;
}
function kept(given: Readonly<Record<string, string>>) {
  const data = form(given);
  const free = freeTyped(data, "en-CA");
  const input = typedPrice(data, near, "en-CA", "Delivery");
  return free === null ? input : withFree(input, freeEntry.parse(free));
}

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

  test("not typed changes nothing", () => {
    expect(kept({})).toMatchObject({ amount: "10.00", per: { quantity: "1" }, packSize: undefined });
    expect(freeTyped(form({ terms: "none-left", paidFor: "2", freeWith: "1" }), "en-CA")).toBeNull();
  });

  test("beside an amount that cannot be read leaves it as typed, for its fault to be named", () => {
    expect(kept({ paidFor: "2", freeWith: "1", amount: "1.2.3" })).toMatchObject({ amount: "1.2.3" });
  });

  test.each([
    [{ paidFor: "2" }, "freeWith", "missing"],
    [{ freeWith: "1" }, "paidFor", "missing"],
    [{ paidFor: "2", freeWith: "0" }, "freeWith", "not-positive"],
    [{ paidFor: "two", freeWith: "1" }, "paidFor", "not-a-number"],
  ] as const)("half typed or wrong (%j) is refused at its field", (given, path, code) => {
    const read = freeEntry.safeParse(freeTyped(form(given), "en-CA"));
    expect(read.success ? [] : faultsOf(read.error)).toEqual([{ path, code }]);
  });
});

test("a delivery charge is kept as a charge per order, and none where none is typed", () => {
  expect(kept({ "fees.0.amount": "85" })).toMatchObject({
    fees: [{ name: "Delivery", amount: "85", basis: "order", taxable: true }],
  });
  expect(kept({})).toMatchObject({ fees: [] });
});
