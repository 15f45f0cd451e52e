import { describe, expect, test } from "vitest";
import { localDate } from "../../lib/calendar/local-date.ts";
import { decimal } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import type { TaxComponent } from "../../lib/tax/region.ts";
import { billTaxes } from "../../lib/tax/tax.ts";

function at(ratePercent: string): TaxComponent {
  return {
    name: "tax",
    ratePercent: decimal(ratePercent),
    from: localDate("1991-01-01"),
    until: null,
    base: "price",
    recoverable: false,
    evidence: "the row checked",
    fromMemory: false,
  };
}
function taxOf(price: string, rate: TaxComponent): string {
  const [tax] = billTaxes([{ base: money(price, "CAD"), exempt: [] }], [rate], "per-bill");
  return tax?.amount.amount.toString() ?? "none";
}

// Measured with Node 20.20.2 against exact integers: what binary floating point makes of a price times a rate.
describe("prices where binary floating point gives the wrong cent", () => {
  test.each([
    ["0.70", "5", 0.03, "0.04"],
    ["2.90", "5", 0.14, "0.15"],
    ["20.70", "5", 1.03, "1.04"],
    ["1.50", "15", 0.22, "0.23"],
    ["260.00", "14.975", 38.93, "38.94"],
    ["2.00", "7.25", 0.14, "0.15"],
  ])("%s at %s percent: not %d but %s", (price, rate, float, right) => {
    expect(Math.round(Number(price) * (Number(rate) / 100) * 100) / 100).toBe(float);
    expect(taxOf(price, at(rate))).toBe(right);
  });

  test("4.50 at 13 percent: not 0.58, as toFixed has it, but 0.59", () => {
    expect((4.5 * 0.13).toFixed(2)).toBe("0.58");
    expect(taxOf("4.50", at("13"))).toBe("0.59");
  });

  // The same measurement: wrong cents among the prices 0.01 to 1,000.00.
  test.each([
    ["5", 102],
    ["15", 1302],
    ["6.25", 286],
    ["7.25", 102],
    ["8.875", 35],
    ["14.975", 5],
  ])("at %s percent that is so for %d of the first 100,000 prices, and never for ours", (rate, wrong) => {
    const component = at(rate);
    const thousandths = Math.round(Number(rate) * 1000);
    let floatWrong = 0;
    let oursWrong = 0;
    for (let cents = 1; cents <= 100_000; cents += 1) {
      // Exact in integers: half up of cents x rate / 100, the rate in thousandths of a percent.
      const right = Math.floor((cents * thousandths * 2 + 100_000) / 200_000);
      const price = cents / 100;
      const trapped = Math.round(price * (Number(rate) / 100) * 100) !== right;
      if (trapped) floatWrong += 1;
      // Ours is asked at every trap and, for time, at every seventh price between them.
      if (!trapped && cents % 7 !== 0) continue;
      const ours = billTaxes([{ base: money(price.toFixed(2), "CAD"), exempt: [] }], [component], "per-bill");
      if (!ours[0]?.amount.amount.times(100).equals(right)) oursWrong += 1;
    }
    expect(floatWrong).toBe(wrong);
    expect(oursWrong).toBe(0);
  });
});
