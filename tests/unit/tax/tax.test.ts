import { describe, expect, test } from "vitest";
import { localDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { CurrencyMismatch, money } from "../../../lib/money/money.ts";
import type { Registration, TaxComponent, TaxRegion } from "../../../lib/tax/region.ts";
import { baseOfInclusive, billTaxes, isRecovered, taxes, taxOn } from "../../../lib/tax/tax.ts";

function component(name: string, ratePercent: string, rest: Partial<TaxComponent> = {}): TaxComponent {
  return {
    name,
    ratePercent: decimal(ratePercent),
    from: localDate("2013-04-01"),
    until: null,
    base: "price",
    recoverable: true,
    evidence: "made for this test",
    fromMemory: false,
    ...rest,
  };
}

const gst = component("GST", "5");
const pst = component("PST", "7", { recoverable: false });
const onBoth = component("QST", "9.5", { base: "price-plus-other-tax" });
const named = (amounts: ReturnType<typeof taxes>) =>
  amounts.map(({ component: { name }, amount }) => `${name} ${amount.amount}`);

describe("the tax of a day", () => {
  const region: TaxRegion = {
    code: "XX",
    name: "somewhere",
    country: null,
    completeFrom: localDate("2013-04-01"),
    components: [
      component("HST", "15", { until: localDate("2025-03-31") }),
      component("HST", "14", { from: localDate("2025-04-01") }),
    ],
  };
  const rates = (day: string) => {
    const tax = taxOn(region, localDate(day));
    return tax.known ? tax.components.map((one) => one.ratePercent.toString()) : tax.reason;
  };

  test("is what is in force, both ends counted", () => {
    expect(rates("2013-04-01")).toEqual(["15"]);
    expect(rates("2025-03-31")).toEqual(["15"]);
    expect(rates("2025-04-01")).toEqual(["14"]);
  });

  test("is not known before the region's components are complete", () => {
    expect(rates("2013-03-31")).toBe("tax-unknown");
  });

  test("is none, and known, where there is no tax", () => {
    expect(taxOn({ ...region, components: [] }, localDate("2020-01-01"))).toEqual({
      known: true,
      components: [],
    });
  });
});

describe("taxes on a price", () => {
  test("stand apart by component and are not rounded", () => {
    expect(named(taxes(money("99.99", "CAD"), [gst, pst], []))).toEqual(["GST 4.9995", "PST 6.9993"]);
  });

  test("leave out what the material or the sighting is exempt from", () => {
    expect(named(taxes(money("100", "CAD"), [gst, pst], ["PST"]))).toEqual(["GST 5"]);
  });

  test("on the price and the other tax bear tax on tax", () => {
    expect(named(taxes(money("100", "CAD"), [gst, onBoth], []))).toEqual(["GST 5", "QST 9.975"]);
  });

  test("on the price and an exempt tax bear none on it", () => {
    expect(named(taxes(money("100", "CAD"), [gst, onBoth], ["GST"]))).toEqual(["QST 9.5"]);
  });

  test("of a refund are negative", () => {
    expect(named(taxes(money("-34", "CAD"), [component("HST", "13")], []))).toEqual(["HST -4.42"]);
  });
});

describe("the base of an amount with tax", () => {
  test("is the amount without it", () => {
    expect(baseOfInclusive(money("112", "CAD"), [gst, pst], []).amount.toString()).toBe("100");
    expect(baseOfInclusive(money("114.975", "CAD"), [gst, onBoth], []).amount.toString()).toBe("100");
  });

  test("is the amount itself where no tax applies", () => {
    expect(baseOfInclusive(money("112", "CAD"), [pst], ["PST"]).amount.toString()).toBe("112");
    expect(baseOfInclusive(money("112", "CAD"), [], []).amount.toString()).toBe("112");
  });

  test("seen at one rate can be taxed at another day's: 46.00 at 15 % is 45.60 at 14 %", () => {
    const base = baseOfInclusive(money("46.00", "CAD"), [component("HST", "15")], []);
    const [tax] = taxes(base, [component("HST", "14")], []);
    expect(base.amount.plus(tax?.amount.amount ?? 0).toString()).toBe("45.6");
  });
});

describe("a tax is recovered", () => {
  const hst = component("HST", "15");
  const registered = (
    tax: string,
    from: string | null = null,
    until: string | null = null,
  ): Registration => ({
    tax,
    from: from === null ? null : localDate(from),
    until: until === null ? null : localDate(until),
  });
  const day = localDate("2024-06-01");

  test("by a buyer registered for it", () => {
    expect(isRecovered(gst, [registered("GST")], day)).toBe(true);
    expect(isRecovered(gst, [], day)).toBe(false);
    expect(isRecovered(component("QST", "9.975"), [registered("GST")], day)).toBe(false);
  });

  test("under one registration for GST and HST", () => {
    expect(isRecovered(hst, [registered("GST")], day)).toBe(true);
    expect(isRecovered(gst, [registered("HST")], day)).toBe(true);
    expect(isRecovered(hst, [registered("GST/HST")], day)).toBe(true);
  });

  test("on the days of the registration, both ends counted", () => {
    const since = [registered("GST", "2024-06-01", "2024-12-31")];
    expect(isRecovered(hst, since, localDate("2024-05-31"))).toBe(false);
    expect(isRecovered(hst, since, localDate("2024-06-01"))).toBe(true);
    expect(isRecovered(hst, since, localDate("2024-12-31"))).toBe(true);
    expect(isRecovered(hst, since, localDate("2025-01-01"))).toBe(false);
  });

  test("never when it is not recoverable", () => {
    expect(isRecovered(pst, [registered("PST")], day)).toBe(false);
  });
});

describe("a bill", () => {
  const line = (amount: string, exempt: readonly string[] = []) => ({ base: money(amount, "CAD"), exempt });
  const lines = [line("0.10"), line("0.10"), line("0.10")];

  test("rounds each component once on the whole", () => {
    expect(named(billTaxes(lines, [gst], "per-bill"))).toEqual(["GST 0.02"]);
  });

  test("or once on each line, when the receipt does", () => {
    expect(named(billTaxes(lines, [gst], "per-line"))).toEqual(["GST 0.03"]);
  });

  test("taxes each line only with what applies to it", () => {
    expect(named(billTaxes([line("100"), line("50", ["PST"])], [gst, pst], "per-bill"))).toEqual([
      "GST 7.5",
      "PST 7",
    ]);
  });

  test("does not name a component that no line bears", () => {
    expect(named(billTaxes([line("50", ["PST"])], [gst, pst], "per-bill"))).toEqual(["GST 2.5"]);
    expect(billTaxes([], [gst], "per-bill")).toEqual([]);
  });

  test("is in one currency", () => {
    const mixed = [line("1"), { base: money(1, "USD"), exempt: [] }];
    expect(() => billTaxes(mixed, [gst], "per-bill")).toThrow(CurrencyMismatch);
  });
});
