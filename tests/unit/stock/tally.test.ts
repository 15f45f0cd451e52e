import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { lengthOfPiece, piecesOf, type TallyRow, tallySum } from "../../../lib/stock/tally.ts";
import { lumber, someMaterial } from "../../support/some-material.ts";

const rows = (...given: readonly (readonly [string, string | null])[]): TallyRow[] =>
  given.map(([pieces, length]) => ({ pieces: decimal(pieces), length }));
const TWO_BY_FOUR = lumber("2x4", "8 ft");
const BY_THE_FOOT: Material = { ...lumber("2x4"), purchaseUnit: "linear-foot" };
const BY_THE_BOARD_FOOT: Material = { ...lumber("2x4"), purchaseUnit: "board-foot" };
const GIVEN = rows(["12", "8 ft"], ["5", "10 ft 3 in"]);

function sumOf(material: Material, tally: readonly TallyRow[]): string {
  const sum = tallySum(tally, material);
  return sum.ok
    ? `${sum.quantity.toFixed()} ${sum.unit}`
    : sum.faults.map(({ path, code }) => `${path}: ${code}`).join(", ");
}

test("bought by the foot, a tally is pieces times length, added up", () => {
  expect(sumOf(BY_THE_FOOT, GIVEN)).toBe("147.25 linear-foot"); // 12 x 8 + 5 x 10.25
});

test("bought by the board foot, it goes through the nominal size", () => {
  expect(sumOf(BY_THE_BOARD_FOOT, GIVEN)).toBe("98.166667 board-foot"); // 147.25 x 2 x 4 / 12
});

test("bought by the piece, each gives as many whole pieces as it is long", () => {
  expect(sumOf(TWO_BY_FOUR, GIVEN)).toBe("17 piece");
  expect(sumOf(TWO_BY_FOUR, rows(["3", "16 ft"], ["1", "15 ft 11 in"]))).toBe("7 piece");
});

test("what is shorter than a piece is none, and its row is named", () => {
  expect(sumOf(TWO_BY_FOUR, rows(["12", "8 ft"], ["5", "7 ft 11-1/2 in"]))).toBe(
    "tally.1.length: shorter-than-piece",
  );
});

test("without a length a row is of the material's own, or of none where it has none", () => {
  expect(sumOf(someMaterial("each"), rows(["4", null]))).toBe("4 each");
  expect(sumOf({ ...TWO_BY_FOUR, purchaseUnit: "linear-foot" }, rows(["4", null]))).toBe("32 linear-foot");
  expect(sumOf(BY_THE_FOOT, rows(["4", null]))).toBe("tally.0.length: missing");
});

test("every row that cannot be read is named, with its own reason", () => {
  const tally = rows(["1", "8"], ["1", "long"], ["2", "8 ft"], ["1", "0 ft"], ["1", "8 ft 20 in"]);
  expect(sumOf(BY_THE_FOOT, tally)).toBe(
    "tally.0.length: length-unit-missing, tally.1.length: not-a-length, tally.3.length: not-positive, tally.4.length: inches-past-a-foot",
  );
});

test("a length where the material has none cannot be told in pieces", () => {
  expect(sumOf(someMaterial("each"), rows(["4", "8 ft"]))).toBe("tally.0.length: unit-not-convertible");
});

test("metric lengths are read as metric, feet as feet", () => {
  expect(
    sumOf({ ...BY_THE_FOOT, purchaseUnit: "linear-metre" }, rows(["2", "2,4 m"], ["1", "1200 mm"])),
  ).toBe("6 linear-metre");
  expect(lengthOfPiece("8'")).toMatchObject({ ok: true, value: { unit: "inch" } });
});

test("pieces are counted whatever their lengths", () => {
  expect(piecesOf(GIVEN).toFixed()).toBe("17");
});
