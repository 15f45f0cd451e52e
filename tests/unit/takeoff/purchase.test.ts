import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { asRequirement, type Purchase, purchaseByYield, purchaseOf } from "../../../lib/takeoff/purchase.ts";
import { areaIn, line, piecesOf, runIn, type TakeoffLine } from "../../../lib/takeoff/result.ts";
import { yieldEntry } from "../../../lib/takeoff/yield.ts";
import { lumber, someMaterial } from "../../support/some-material.ts";

function only([one]: readonly TakeoffLine[]): TakeoffLine {
  if (one === undefined) throw new Error("no line");
  return one;
}

const studs = only(line("studs", piecesOf(decimal(19)), "19", runIn("imperial", decimal("92.625"))));
const sheathing = only(line("wallSheathing", areaIn("imperial", decimal(144_000)), "1000"));
const plates = only(line("plates", runIn("imperial", decimal(1200)), "100"));
const pavers = only(line("pavers", piecesOf(decimal(540)), "540"));

function told(purchase: Purchase): string {
  return purchase.ok
    ? `${asRequirement(purchase.quantity).value} ${purchase.quantity.unit}`
    : purchase.reason;
}
const bought = (what: TakeoffLine, material: Material) => told(purchaseOf(what, material));
const yielded = (what: TakeoffLine, unit: string, holds: string) =>
  told(purchaseByYield(what, yieldEntry.parse({ unit, holds, source: "its wrapper" })));

test("an area is bought by the sheet, neither with waste nor rounded up", () => {
  expect(bought(sheathing, someMaterial("sheet", { faceWidth: "4 ft", faceLength: "8 ft" }))).toBe(
    "31.25 sheet",
  );
});

test("a length is bought by the piece of the material's own length", () => {
  expect(bought(plates, lumber("2x4", "16 ft"))).toBe("6.25 piece");
});

test("studs come whole from pieces that are long enough, two from one twice as long", () => {
  expect(bought(studs, lumber("2x4", "8 ft"))).toBe("19 piece");
  expect(bought(studs, lumber("2x4", "92-5/8 in"))).toBe("19 piece");
  expect(bought(studs, lumber("2x4", "15 ft"))).toBe("19 piece");
  expect(bought(studs, lumber("2x4", "16 ft"))).toBe("9.5 piece");
});

test("a piece shorter than the cut is refused, however many there are", () => {
  expect(bought(studs, lumber("2x4", "7 ft"))).toBe("piece-too-short");
  expect(yielded(studs, "piece", "7 ft")).toBe("piece-too-short");
});

test("what is bought by length is bought for the cuts end to end", () => {
  expect(bought(studs, someMaterial("linear-foot", { length: "16 ft" }))).toBe("146.65625 linear-foot");
});

test("what is bought by board measure follows the pieces, or the running length where they have none", () => {
  const mbf = { ...lumber("2x4", "8 ft"), purchaseUnit: "mbf" } as const;
  expect(bought(studs, mbf)).toBe("0.101333 mbf");
  expect(bought(studs, { ...lumber("2x4"), purchaseUnit: "mbf" })).toBe("0.097771 mbf");
});

test("pieces are bought by the bundle the material says", () => {
  expect(bought(pavers, someMaterial("bundle", { pieces: "120 pieces" }))).toBe("4.5 bundle");
});

test("what the dimensions do not say is refused with the reason", () => {
  expect(bought(sheathing, someMaterial("sheet"))).toBe("area-unknown");
  expect(bought(studs, someMaterial("bundle"))).toBe("pieces-unknown");
  expect(bought(pavers, someMaterial("bundle"))).toBe("pieces-unknown");
});

test("a yield answers with where it was read", () => {
  const bag = yieldEntry.parse({ unit: "bag", holds: "0.6 cu ft", source: "printed on the bag" });
  const slab = only(line("concrete", { value: decimal(30), unit: "cubic-foot" }, "30"));
  expect(purchaseByYield(slab, bag)).toMatchObject({ ok: true, source: "printed on the bag" });
  expect(told(purchaseByYield(slab, bag))).toBe("50 bag");
});

test("a yield in another unit of the same measure is converted", () => {
  expect(yielded(plates, "bundle", "3048 mm")).toBe("10 bundle");
  expect(yielded(studs, "piece", "16 ft")).toBe("9.5 piece");
  expect(yielded(pavers, "bundle", "120 pieces")).toBe("4.5 bundle");
});

test("a yield of another measure is refused", () => {
  expect(yielded(sheathing, "bundle", "20 ft")).toBe("another-measure");
  expect(yielded(pavers, "bundle", "20 sq ft")).toBe("another-measure");
});

test("a requirement keeps six places, and no dust of a division becomes a piece more", () => {
  const third = { value: decimal(57).dividedBy(3), unit: "piece" } as const;
  expect(asRequirement({ ...third, value: decimal("16.66666666666") }).value.toString()).toBe("16.666667");
  expect(asRequirement({ ...third, value: decimal("19.0000000001") }).value.toString()).toBe("19");
});
