import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { inRec20, unitOfRec20 } from "../../../lib/measure/rec20.ts";
import { UNITS, type UnitCode } from "../../../lib/measure/units.ts";

function stated(value: string, unit: UnitCode): string | null {
  const told = inRec20({ value: decimal(value), unit });
  return told && `${told.value} ${told.code}${told.isPacked ? " packed" : ""}`;
}

describe("a quantity for a program that reads Recommendation 20", () => {
  test("goes under the code of its own unit, unchanged", () => {
    expect(stated("1.5", "mbf")).toBe("1.5 MBF");
    expect(stated("16", "linear-foot")).toBe("16 LF");
    expect(stated("3", "square")).toBe("3 SQR");
    expect(stated("40", "each")).toBe("40 EA");
    expect(stated("40", "piece")).toBe("40 H87");
  });

  test("of sheets goes as so many each, because the code of a sheet was deleted", () => {
    expect(stated("38", "sheet")).toBe("38 EA");
  });

  test("of packs goes as so many each, and says that each is a pack", () => {
    for (const unit of ["bundle", "roll", "bag", "box"] as const)
      expect(stated("27", unit)).toBe("27 EA packed");
  });

  test("of thousands of square feet goes as square feet", () => {
    expect(stated("3.2", "msf")).toBe("3200 FTK");
  });

  test("on the 3/8 in basis is not passed off as a plain volume, nor a density as a quantity", () => {
    expect(stated("1", "msf-3-8")).toBeNull();
    expect(stated("35", "pound-per-cubic-foot")).toBeNull();
  });
});

test("a live code is read back as its unit", () => {
  for (const [unit, { rec20 }] of Object.entries(UNITS))
    if (rec20 !== null) expect(unitOfRec20(rec20)).toBe(unit);
  expect(unitOfRec20(" mbf ")).toBe("mbf");
});

test("a deleted code, a deprecated one and one of something else are no unit of ours", () => {
  for (const code of ["ST", "BE", "QT", "HUR", ""]) expect(unitOfRec20(code)).toBeNull();
});
