import { describe, expect, test } from "vitest";
import { type LocalDate, localDate } from "../../../lib/calendar/local-date.ts";
import { type Decimal, decimal, roundHalfUp } from "../../../lib/decimal.ts";
import { allInPrice } from "../../../lib/prices/all-in-price.ts";
import type { Fee, Observation } from "../../../lib/prices/observation.ts";
import type { StandingDiscount } from "../../../lib/prices/store.ts";
import {
  daysAgo,
  fee,
  observation,
  rate,
  SHEET,
  store,
  TODAY,
  valuation,
} from "../../support/price-example.ts";

const cents = (value: Decimal) => roundHalfUp(value, 2).toFixed(2);

function known(seen: Observation, discounts: readonly StandingDiscount[] = [], on: LocalDate = TODAY) {
  const stores = [store("near", { taxRegion: "CA-NS", discounts }), store("far", { discounts })];
  const found = allInPrice(seen, SHEET, valuation({ stores }), on);
  if (!found.known) throw new Error(found.reason);
  return found;
}
const price = (...given: Parameters<typeof known>) => cents(known(...given).price.amount);

function discount(percent: string, given: Partial<StandingDiscount> = {}): StandingDiscount {
  return { category: null, percent: decimal(percent), from: null, until: null, ...given };
}

describe("a standing discount", () => {
  const untaxed = { storeId: "far" };

  test("comes off before tax", () => {
    expect(price(observation("250.00"), [discount("10")])).toBe("256.50");
  });

  test("comes off a tax-inclusive amount once its tax is out", () => {
    expect(price(observation("114.00", { taxIncluded: true }), [discount("10")])).toBe("102.60");
  });

  test("named for the category wins over one for all", () => {
    const both = [discount("10"), discount("4", { category: "sheet-goods" })];
    expect(price(observation("100.00", untaxed), both)).toBe("96.00");
  });

  test("of another category does not count", () => {
    expect(price(observation("100.00", untaxed), [discount("10", { category: "doors" })])).toBe("100.00");
  });

  test("of several the larger counts, they never add up", () => {
    expect(price(observation("100.00", untaxed), [discount("5"), discount("8"), discount("3")])).toBe(
      "92.00",
    );
  });

  test("counts on its days, both ends included, whenever the price was seen", () => {
    const dated = [discount("10", { from: daysAgo(10), until: daysAgo(5) })];
    const seen = observation("100.00", { ...untaxed, seenOn: daysAgo(20) });
    const on = (ago: number) => price(seen, dated, daysAgo(ago));
    expect([on(11), on(10), on(5), on(4)]).toEqual(["100.00", "90.00", "90.00", "100.00"]);
  });

  test("is not taken off a receipt, which shows it already", () => {
    expect(price(observation("90.00", { ...untaxed, terms: "paid" }), [discount("10")])).toBe("90.00");
  });
});

describe("a fee", () => {
  const with_ = (fees: readonly Fee[], amount = "40.00") => observation(amount, { fees });
  const half = decimal("0.50");

  test("per unit is added, with tax when it is taxable", () => {
    expect(price(with_([fee("eco", { amount: half })]))).toBe("46.10");
    expect(price(with_([fee("eco", { amount: half, taxable: true })]))).toBe("46.17");
  });

  test("in percent is of the price after the discount", () => {
    const card = fee("card", { percent: decimal(2) });
    expect(price({ ...with_([card], "100.00"), storeId: "far" }, [discount("10")])).toBe("91.80");
  });

  test("in percent is part of the unit price even when it is charged per order", () => {
    const card = fee("card", { percent: decimal(2), basis: "order" });
    expect(price({ ...with_([card], "100.00"), storeId: "far" })).toBe("102.00");
    expect(known(with_([card])).orderCharges).toEqual([]);
  });

  test("per unit of the tag is brought to the purchase unit", () => {
    const perFoot = observation("1.00", {
      storeId: "far",
      per: { quantity: decimal(1), unit: "square-foot" },
      fees: [fee("eco", { amount: decimal("0.01") })],
    });
    expect(price(perFoot)).toBe("32.32");
  });

  test("is not taken out of a tax-inclusive amount: it stands beside it", () => {
    const seen = observation("45.60", { taxIncluded: true, fees: [fee("eco", { amount: half })] });
    expect(price(seen)).toBe("46.10");
  });

  test("counts towards free delivery, before tax", () => {
    expect(cents(known(with_([fee("eco", { amount: half, taxable: true })])).beforeTax.amount)).toBe("40.50");
  });
});

describe("a charge per order", () => {
  const delivery = fee("delivery", {
    amount: decimal(85),
    basis: "order",
    freeFrom: decimal(500),
    taxable: true,
  });

  test("is not in the unit price", () => {
    expect(price(observation("40.00", { fees: [delivery] }))).toBe(price(observation("40.00")));
  });

  test("stands beside it with its tax and where it is waived", () => {
    const [charge, ...more] = known(observation("40.00", { fees: [delivery] })).orderCharges;
    expect(more).toEqual([]);
    expect([charge?.name, charge && cents(charge.amount.amount)]).toEqual(["delivery", "96.90"]);
    expect(charge?.freeFrom && cents(charge.freeFrom.amount)).toBe("500.00");
  });

  test("that is not taxable bears no tax", () => {
    const [charge] = known(observation("40.00", { fees: [{ ...delivery, taxable: false }] })).orderCharges;
    expect(charge && cents(charge.amount.amount)).toBe("85.00");
  });

  test("of nothing is no charge", () => {
    expect(known(observation("40.00", { fees: [{ ...delivery, amount: decimal(0) }] })).orderCharges).toEqual(
      [],
    );
  });

  test("in another currency is read at the rate of the day, where it is waived too", () => {
    const there = valuation({
      stores: [store("near", { currency: "USD" })],
      rates: [rate(TODAY, "USD", "CAD", "1.40")],
    });
    const found = allInPrice(
      observation("40.00", { currency: "USD", fees: [delivery] }),
      SHEET,
      there,
      TODAY,
    );
    const [charge] = found.known ? found.orderCharges : [];
    expect(charge && [cents(charge.amount.amount), charge.freeFrom && cents(charge.freeFrom.amount)]).toEqual(
      ["119.00", "700.00"],
    );
  });
});

test("what an order charge costs does not depend on the day its price was seen, but on the day asked for", () => {
  const delivery = fee("delivery", { amount: decimal(100), basis: "order", taxable: true });
  const seen = observation("40.00", { seenOn: localDate("2025-03-20"), fees: [delivery] });
  const on = (day: string) => known(seen, [], localDate(day)).orderCharges[0]?.amount.amount.toFixed(2);
  expect([on("2025-03-31"), on("2025-04-01")]).toEqual(["115.00", "114.00"]);
});
