import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { type Disposal, wasteWeight } from "../../../lib/projects/disposal.ts";
import { disposalCost, disposalFee, disposalTotal } from "../../../lib/projects/disposal-cost.ts";
import { disposalEntry } from "../../../lib/projects/disposal-entry.ts";
import { law } from "../../support/law.ts";
import { component, day, region, valuation } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";

const HST = region("TAXED", [component("HST", "15")]);
const WASTE: Disposal = {
  id: "waste",
  projectId: "job",
  kind: "mixed",
  on: day("2026-02-01"),
  feeBasis: "tonne",
  fee: decimal(125),
  least: null,
  loads: null,
  hauling: decimal(30),
  currency: "CAD",
  taxIncluded: false,
  taxRegion: null,
  weight: { value: decimal(680), unit: "kilogram" },
  materialId: null,
  quantity: null,
  note: null,
};
const SHINGLES = someMaterial(
  "bundle",
  { weight: "70 lb" },
  { id: "shingles", sources: { weight: "the wrapper" } },
);
function costOf(given: Partial<Disposal> = {}, registered = false, material = SHINGLES): string {
  const registrations = registered ? [{ tax: "GST/HST", from: day("2020-01-01"), until: null }] : [];
  const found = disposalCost({ ...WASTE, ...given }, material, valuation({ regions: [HST], registrations }));
  return found.known ? `${found.cost.amount.toFixed()} ${found.cash.amount.toFixed()}` : found.reason;
}

describe("what waste cost", () => {
  test("per tonne is the fee by its weight, and hauling beside it", () => {
    expect(costOf()).toBe("115 115"); // 0.68 x 125 + 30
  });

  test("is at least what the site charges at least", () => {
    expect(costOf({ least: decimal(100) })).toBe("130 130");
    expect(costOf({ least: decimal(80) })).toBe("115 115");
  });

  test("per load is the fee by the loads, flat is the fee", () => {
    expect(costOf({ feeBasis: "load", loads: decimal(3) })).toBe("405 405"); // 3 x 125 + 30
    expect(costOf({ feeBasis: "flat" })).toBe("155 155");
  });

  test("carries the tax of its own day on the fee, the part that comes back left out of cost", () => {
    const taxed = { feeBasis: "flat", taxRegion: "TAXED" } as const;
    expect(costOf(taxed)).toBe("173.75 173.75"); // 125 x 1.15 + 30
    expect(costOf(taxed, true)).toBe("155 173.75");
    expect(costOf({ ...taxed, taxIncluded: true, fee: decimal(115) }, true)).toBe("130 145"); // 115 / 1.15 + 30
    expect(costOf({ ...taxed, taxIncluded: true, fee: decimal(115) })).toBe("145 145");
  });

  test("is not known without the weight, the tax or the rate it takes", () => {
    expect(costOf({ weight: null })).toBe("weight-unknown");
    expect(costOf({ taxRegion: "NOWHERE" })).toBe("region-unknown");
    expect(costOf({ taxRegion: "TAXED", on: day("2009-06-01") })).toBe("tax-unknown");
    expect(costOf({ currency: "USD" })).toBe("rate-unknown");
  });

  test("adds up until a day; what is not known is counted and never taken for nothing", () => {
    const all = [
      WASTE,
      { ...WASTE, on: day("2026-02-02"), weight: null },
      { ...WASTE, on: day("2026-02-03"), feeBasis: "flat" as const },
    ];
    const until = (text: string) => {
      const { cost, count, unknown } = disposalTotal(all, new Map(), valuation(), day(text));
      return [cost.amount.toFixed(), count, unknown];
    };
    expect(until("2026-02-02")).toEqual(["115", 2, 1]);
    expect(until("2026-02-03")).toEqual(["270", 3, 1]);
  });

  test("per tonne never falls as it gets heavier, and never below the least", () => {
    const kilograms = fc.integer({ min: 0, max: 100_000 });
    law(
      fc.property(kilograms, kilograms, (one, other) => {
        const fee = (kg: number) => disposalFee({ ...WASTE, least: decimal(45) }, decimal(kg)) ?? decimal(0);
        const lighter = fee(Math.min(one, other));
        expect(fee(Math.max(one, other)).greaterThanOrEqualTo(lighter)).toBe(true);
        expect(lighter.greaterThanOrEqualTo(45)).toBe(true);
      }),
    );
  });
});

describe("what waste weighs", () => {
  test("is what the scale said, in kilograms", () => {
    const weighed = wasteWeight({ weight: { value: decimal(1000), unit: "pound" }, quantity: null }, null);
    expect([weighed?.kilograms.toFixed(), weighed?.from]).toEqual(["453.59237", "weighed"]);
  });

  test("else follows from the material, with the source of its weight", () => {
    const known = wasteWeight({ weight: null, quantity: decimal(20) }, SHINGLES);
    expect(known?.kilograms.toFixed()).toBe("635.029318"); // 20 x 70 x 0.45359237
    expect(known).toMatchObject({ from: "material", source: "the wrapper" });
  });

  test("is not known where nobody weighed and the material does not say", () => {
    expect(wasteWeight({ weight: null, quantity: decimal(20) }, someMaterial("bundle"))).toBeNull();
    expect(wasteWeight({ weight: null, quantity: null }, null)).toBeNull();
  });
});

describe("an entry of waste", () => {
  const given = { kind: "drywall", on: "2026-02-01", feeBasis: "flat", fee: "40", currency: "CAD" };
  const faults = (more: object) => {
    const read = disposalEntry.safeParse({ ...given, ...more });
    return read.success ? [] : faultsOf(read.error).map(({ path, code }) => `${path}: ${code}`);
  };

  test("asks loads of a fee per load only, and a least charge of a fee per tonne only", () => {
    expect(faults({})).toEqual([]);
    expect(faults({ feeBasis: "load" })).toEqual(["loads: missing"]);
    expect(faults({ loads: "2" })).toEqual(["loads: not-asked"]);
    expect(faults({ least: "20" })).toEqual(["least: not-asked"]);
  });

  test("names a material with its quantity, or neither", () => {
    expect(faults({ quantity: "3" })).toEqual(["materialId: missing"]);
    expect(faults({ materialId: "00000000-0000-4000-8000-000000000001" })).toEqual(["quantity: missing"]);
    expect(faults({ kind: "radioactive", fee: "-1" })).toEqual(["kind: unknown-choice", "fee: negative"]);
  });
});
