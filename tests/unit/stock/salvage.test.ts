import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { isUsed, mayServe, salvageCost, salvagePaid } from "../../../lib/stock/salvage.ts";
import { salvageEntry } from "../../../lib/stock/salvage-entry.ts";
import { day } from "../../support/price-example.ts";
import { needOf, revisionOf } from "../../support/stock-example.ts";

const took = (hours: string, rate: string, hauling = "0", price = "0") => ({
  hours: decimal(hours),
  hourlyRate: decimal(rate),
  hauling: decimal(hauling),
  purchasePrice: decimal(price),
  currency: "CAD" as const,
});

describe("what salvage cost", () => {
  test("is hours at their rate, hauling and what was paid for it", () => {
    expect(salvageCost(took("6.5", "28", "35.50", "40")).amount.toFixed()).toBe("257.5"); // 182 + 35.50 + 40
  });

  test("rounds the hours' money once, half up", () => {
    expect(salvageCost(took("1.5", "10.03", "0.01")).amount.toFixed()).toBe("15.06"); // 15.045 -> 15.05
  });

  test("may be nothing, and stands on the receipt with no tax", () => {
    expect(salvagePaid(took("0", "0"))).toMatchObject({ taxIncluded: true, taxRegion: null, fees: [] });
    expect(salvagePaid(took("0", "0")).amount.isZero()).toBe(true);
  });
});

describe("used material", () => {
  const lot = { origin: "salvaged", terms: null } as const;
  const need = (acceptsUsed: boolean, validFrom = "2026-01-01") =>
    needOf("need", revisionOf("10", { acceptsUsed, validFrom: day(validFrom) }));
  const on = day("2026-02-01");

  test("is what was salvaged or bought as used", () => {
    expect(isUsed(lot)).toBe(true);
    expect(isUsed({ origin: "bought", terms: "used" })).toBe(true);
    expect(isUsed({ origin: "left-over", terms: null })).toBe(false);
  });

  test("serves only a requirement that accepts it; new material serves any", () => {
    expect(mayServe(lot, need(false), on)).toBe(false);
    expect(mayServe(lot, need(true), on)).toBe(true);
    expect(mayServe({ origin: "bought", terms: "shelf" }, need(false), on)).toBe(true);
  });

  test("goes by the requirement as it stood on the day", () => {
    const [older] = need(false).revisions;
    const [newer] = need(true, "2026-02-01").revisions;
    if (older === undefined || newer === undefined) throw new Error("two revisions");
    const changed = { ...need(false), revisions: [older, newer] };
    expect(mayServe(lot, changed, day("2026-01-31"))).toBe(false);
    expect(mayServe(lot, changed, on)).toBe(true);
  });
});

describe("an entry of salvage", () => {
  const materialId = "00000000-0000-4000-8000-000000000001";
  const given = {
    materialId,
    reclaimedFrom: "the old porch",
    currency: "CAD",
    condition: "0.6",
    on: "2026-02-01",
  };
  const faults = (more: object) => {
    const read = salvageEntry.safeParse({ ...given, ...more });
    return read.success ? [] : faultsOf(read.error).map(({ path, code }) => `${path}: ${code}`);
  };

  test("says where from, and either a tally or a quantity", () => {
    expect(faults({ quantity: "4" })).toEqual([]);
    expect(faults({ tally: [{ pieces: "4", length: "8 ft" }] })).toEqual([]);
    expect(faults({})).toEqual(["quantity: missing"]);
    expect(faults({ quantity: "4", tally: [{ pieces: "4" }] })).toEqual(["quantity: said-twice"]);
    expect(faults({ quantity: "4", reclaimedFrom: null })).toEqual(["reclaimedFrom: missing"]);
    expect(faults({ quantity: "4", reclaimedFrom: null, projectId: materialId })).toEqual([]);
  });

  test("counts whole pieces, more than none, in a condition above nothing and at most new", () => {
    expect(faults({ tally: [{ pieces: "4.5", length: "8 ft" }, { pieces: "0" }] })).toEqual([
      "tally.0.pieces: not-whole",
      "tally.1.pieces: not-positive",
    ]);
    expect(faults({ quantity: "4", condition: "0" })).toEqual(["condition: not-positive"]);
    expect(faults({ quantity: "4", condition: "1.01" })).toEqual(["condition: percent-out-of-range"]);
    expect(faults({ quantity: "4", hours: "-1" })).toEqual(["hours: negative"]);
  });
});
