import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { requirementEntry, requirementPatch } from "../../../lib/projects/requirement-entry.ts";

const NEED = {
  materialId: "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0001",
  quantity: "38",
  unit: "sheet",
  neededBy: "2026-06-01",
};

function codes(given: Record<string, unknown>): string[] {
  const parsed = requirementEntry.safeParse({ ...NEED, ...given });
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("waste is none, used is not accepted and no other material does, unless said", () => {
  const parsed = requirementEntry.parse(NEED);
  expect(parsed.wastePercent.toString()).toBe("0");
  expect(parsed).toMatchObject({
    acceptsUsed: false,
    alternatives: [],
    budgetUnitPrice: null,
    validFrom: null,
  });
});

test("waste of 900 percent is refused, 0 and 100 are not", () => {
  expect(codes({ wastePercent: "900" })).toEqual(["wastePercent percent-out-of-range"]);
  expect(codes({ wastePercent: "-1" })).toEqual(["wastePercent percent-out-of-range"]);
  expect(codes({ wastePercent: 10 })).toEqual(["wastePercent not-text"]);
  expect(codes({ wastePercent: "100" })).toEqual([]);
  expect(codes({ wastePercent: "0" })).toEqual([]);
});

test("a quantity of nothing and an id that is none are refused together", () => {
  expect(codes({ quantity: "0", materialId: "plywood" })).toEqual([
    "materialId not-an-id",
    "quantity not-positive",
  ]);
});

test("a revision may close a requirement, not before it begins", () => {
  expect(requirementPatch.parse({ quantity: "40" }).quantity?.toString()).toBe("40");
  const parsed = requirementPatch.safeParse({ validFrom: "2026-05-02", closedOn: "2026-05-01" });
  expect(parsed.success ? [] : faultsOf(parsed.error)).toEqual([{ path: "closedOn", code: "days-reversed" }]);
});
