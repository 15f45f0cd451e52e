import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { faultsOf } from "../../../lib/fault.ts";
import type { Disposal } from "../../../lib/projects/disposal.ts";
import { choiceText } from "../../../lib/show/choice-text.ts";
import { tallyText } from "../../../lib/show/salvage-text.ts";
import { wasteRows, wasteTotalText } from "../../../lib/show/waste-text.ts";
import { salvageChoiceEntry } from "../../../lib/stock/salvage-choice-entry.ts";
import { day, valuation } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";
import { cad } from "../../support/stock-example.ts";

const EN = "en-CA";

test("a tally reads as it was counted", () => {
  const rows = [
    { pieces: decimal(12), length: "8 ft" },
    { pieces: decimal(4), length: null },
  ];
  expect(tallyText(rows, EN)).toBe("12 × 8 ft, 4");
});

describe("waste, for reading", () => {
  const waste: Disposal = {
    id: "waste",
    projectId: "job",
    kind: "mixed",
    on: day("2026-02-01"),
    feeBasis: "flat",
    fee: decimal(100),
    least: null,
    loads: null,
    hauling: decimal(0),
    currency: "CAD",
    taxIncluded: false,
    taxRegion: null,
    weight: null,
    materialId: null,
    quantity: null,
    note: null,
  };
  const unweighed: Disposal = { ...waste, id: "unweighed", feeBasis: "tonne" };
  const total = (all: readonly Disposal[], complete = true) =>
    wasteTotalText(all, new Map(), valuation(), day("2026-02-02"), { amount: cad(900), complete }, EN);

  test("stands beside the estimate, and the two together", () => {
    expect(total([waste])).toMatchObject({ spent: "100.00", estimate: "900.00", together: "1,000.00" });
    expect(total([waste])).toMatchObject({ cash: null, atLeast: false, unknown: 0 });
  });

  test("is at least that much when something of it, or of the estimate, is not known", () => {
    expect(total([waste, unweighed])).toMatchObject({ spent: "100.00", atLeast: true, unknown: 1, count: 2 });
    expect(total([waste], false).atLeast).toBe(true);
  });

  test("says why a cost is not known, and never nought", () => {
    const [row] = wasteRows([unweighed], new Map(), valuation(), day("2026-02-02"), EN);
    expect(row).toMatchObject({ weight: null, cost: null, unknown: "weight-unknown" });
    expect(wasteRows([waste], new Map(), valuation(), day("2026-01-31"), EN)).toEqual([]);
  });
});

describe("keep, sell or dump, for reading", () => {
  const given = { materialId: "00000000-0000-4000-8000-000000000001", quantity: "20", condition: "0.5" };
  const read = (more: object) => salvageChoiceEntry.parse({ ...given, feeBasis: "tonne", ...more });
  const bundles = someMaterial("bundle", { weight: "50 kg" });
  const going = { known: true, price: cad(10), unit: "bundle", stores: 1, kind: "fresh" } as const;
  const ways = (more: object, material = bundles) => {
    const text = choiceText(read(more), material, going, "CAD", EN);
    return [text.weight, ...text.ways.map(({ choice, total }) => `${choice} ${total}`)];
  };

  test("takes the weight from the material where none is said", () => {
    // 20 x 50 kg = 1 t at 110; 20 x 10 x 0.5
    expect(ways({ fee: "110", storage: "0" })).toEqual(["1,000", "keep +100.00", "dump -110.00"]);
    expect(ways({ fee: "110", storage: "0", weight: "500" })).toEqual(["500", "keep +100.00", "dump -55.00"]);
    expect(ways({ fee: "110", storage: "0" }, someMaterial("bundle"))[2]).toBe("dump null");
  });

  test("asks how many loads of a fee per load, once a fee is said", () => {
    const faults = (more: object) => {
      const answer = salvageChoiceEntry.safeParse({ ...given, feeBasis: "load", ...more });
      return answer.success ? [] : faultsOf(answer.error).map(({ path, code }) => `${path}: ${code}`);
    };
    expect(faults({})).toEqual([]);
    expect(faults({ fee: "60" })).toEqual(["loads: missing"]);
  });
});
