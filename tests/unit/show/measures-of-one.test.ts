import { describe, expect, test } from "vitest";
import { Decimal, decimal, ONE } from "../../../lib/decimal.ts";
import { CATALOGUE } from "../../../lib/materials/catalogue/catalogue.ts";
import { convertFor } from "../../../lib/materials/convert.ts";
import { measuresOf } from "../../../lib/materials/measures.ts";
import { priceSeries } from "../../../lib/prices/series.ts";
import { measuresOfOne } from "../../../lib/show/measures-of-one.ts";
import { usableUnits } from "../../../lib/show/usable-units.ts";
import { materialOf } from "../../support/catalogue-material.ts";
import { observation, valuation } from "../../support/price-example.ts";
import { lumber } from "../../support/some-material.ts";

/** Equal but for what a division that does not end leaves behind. */
function agree(a: Decimal, b: Decimal): boolean {
  return a.minus(b).abs().lessThan(Decimal.max(ONE, a.abs()).times("1e-30"));
}

describe.each(CATALOGUE.map((entry) => [entry.key, materialOf(entry)] as const))("%s", (_, material) => {
  const own = material.purchaseUnit;

  test("reads one of it in every measure offered, and back", () => {
    for (const unit of new Set([...measuresOf(material), ...usableUnits(material)])) {
      const read = convertFor(material, { value: ONE, unit: own }, unit);
      if (!read.ok) throw new Error(`${unit}: ${read.reason}`);
      const back = convertFor(material, { value: read.value, unit }, own);
      expect(back.ok && agree(back.value, ONE), unit).toBe(true);
    }
  });

  test("says what one of it is closely enough to be reckoned with", () => {
    for (const { unit, text, exact } of measuresOfOne(material, "en-CA")) {
      const off = decimal(text.replaceAll(",", "")).minus(exact).abs().dividedBy(exact);
      expect(off.lessThanOrEqualTo("0.005"), `${unit} ${text}`).toBe(true);
    }
  });

  test("has one price, by whichever measure it is read or was written", () => {
    for (const unit of measuresOf(material)) {
      const terms = { from: null, until: null, unit, currency: "home" } as const;
      const one = { ...observation("12.34"), materialId: material.id, per: { quantity: ONE, unit: own } };
      const [point] = priceSeries([one], material, valuation(), terms);
      const inOne = convertFor(material, { value: ONE, unit: own }, unit);
      if (!point?.known || !inOne.ok) throw new Error(`${unit} cannot be read`);
      expect(agree(point.price.amount.times(inOne.value), decimal("12.34")), unit).toBe(true);
    }
  });
});

test("a small measure is said in three figures, not in three places", () => {
  const small = measuresOfOne(lumber("2x4", "8 ft"), "en-CA").find(({ unit }) => unit === "mbf");
  expect(small?.text).toBe("0.00533");
});
