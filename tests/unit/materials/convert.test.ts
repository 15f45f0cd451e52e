import { describe, expect, test } from "vitest";
import { decimal, roundHalfUp } from "../../../lib/decimal.ts";
import { convertFor, purchaseStep, roundUpToPurchase } from "../../../lib/materials/convert.ts";
import type { Material } from "../../../lib/materials/material.ts";
import type { UnitCode } from "../../../lib/measure/units.ts";
import { dimensions, lumber, someMaterial } from "../../support/some-material.ts";

/** The value when it converts, else the reason why not. */
function read(material: Material, value: string, from: UnitCode, to: UnitCode): string {
  const conversion = convertFor(material, { value: decimal(value), unit: from }, to);
  return conversion.ok ? conversion.value.toString() : conversion.reason;
}

describe("a board", () => {
  const stud = lumber("2x4", "8 ft", ["1.5 in", "3.5 in"]);

  test("is five and a third board feet, by its nominal size", () => {
    expect(read(stud, "3", "piece", "board-foot")).toBe("16");
    expect(read(stud, "1", "mbf", "piece")).toBe("187.5");
  });

  test("is real wood by its actual size", () => {
    expect(read(stud, "144", "piece", "cubic-foot")).toBe("42");
  });

  test("is as long as it is", () => {
    expect(read(stud, "3", "piece", "linear-foot")).toBe("24");
    expect(read(stud, "24", "linear-foot", "each")).toBe("3");
  });

  test("under an inch thick counts as an inch", () => {
    expect(read(lumber("0.5x6", "12 ft"), "1", "piece", "board-foot")).toBe("6");
  });

  test("covers no area: its length is not one", () => {
    expect(read(stud, "24", "linear-foot", "square-foot")).toBe("length-cannot-cover-area");
    expect(read(stud, "1", "piece", "square-foot")).toBe("area-unknown");
  });

  test("without a known length is board feet by the running foot only", () => {
    const bare = lumber("2x6");
    expect(read(bare, "1", "mbf", "linear-foot")).toBe("1000");
    expect(read(bare, "1", "piece", "board-foot")).toBe("length-unknown");
    expect(read(bare, "1", "piece", "linear-foot")).toBe("length-unknown");
  });

  test("without a nominal size is no board feet, without an actual one no volume, without a weight no pounds", () => {
    expect(read(someMaterial("piece", { length: "8 ft" }), "1", "piece", "mbf")).toBe("nominal-size-unknown");
    expect(read(lumber("2x4", "8 ft"), "1", "piece", "cubic-foot")).toBe("actual-size-unknown");
    expect(read(stud, "1", "piece", "pound")).toBe("weight-unknown");
  });
});

describe("a price per thousand board feet and per piece of one board agree to the cent", () => {
  test.each([
    ["2x4", "8 ft", "840", "4.48"],
    ["2x6", "10 ft", "400", "4"],
    ["2x10", "14 ft", "301.50", "7.04"],
  ])("%s of %s at %s per MBF is %s", (nominal, length, perThousand, each) => {
    const pieces = convertFor(lumber(nominal, length), { value: decimal(1), unit: "mbf" }, "piece");
    expect(pieces.ok && roundHalfUp(decimal(perThousand).dividedBy(pieces.value), 2).toString()).toBe(each);
  });
});

describe("a panel", () => {
  const sheet = someMaterial("sheet", { faceWidth: "48 in", faceLength: "96 in", thickness: "1/2 in" });

  test("covers its face", () => {
    expect(read(sheet, "1", "sheet", "square-foot")).toBe("32");
    expect(read(sheet, "1", "msf", "sheet")).toBe("31.25");
    expect(read(sheet, "3", "sheet", "cubic-foot")).toBe("4");
  });

  test("with a stated coverage covers that, not its face", () => {
    const lapped = someMaterial("sheet", { faceWidth: "38 in", faceLength: "12 ft", coverage: "36 sq ft" });
    expect(read(lapped, "2", "sheet", "square-foot")).toBe("72");
  });

  test("cut to length covers its face width by that length", () => {
    const panel = someMaterial("linear-foot", { faceWidth: "36 in" });
    expect(read(panel, "12.5", "linear-foot", "square-foot")).toBe("37.5");
  });

  test("of no known face covers nothing one could tell", () => {
    expect(read(someMaterial("sheet"), "1", "sheet", "square-foot")).toBe("area-unknown");
  });

  test("is called sheet, piece or each, but is no roll", () => {
    expect(read(sheet, "5", "each", "sheet")).toBe("5");
    expect(read(sheet, "5", "roll", "sheet")).toBe("another-pack");
  });
});

describe("a bundle", () => {
  const shingles = someMaterial("bundle", { coverage: "32 sq ft", pieces: "20 pieces", weight: "70 lb" });

  test("covers and weighs what is stated for the whole bundle", () => {
    expect(read(shingles, "3", "bundle", "square-foot")).toBe("96");
    expect(read(shingles, "2", "bundle", "pound")).toBe("140");
    expect(read(shingles, "1", "square", "bundle")).toBe("3.125");
  });

  test("holds its pieces", () => {
    expect(read(shingles, "5", "piece", "bundle")).toBe("0.25");
    expect(read(shingles, "1", "piece", "square-foot")).toBe("1.6");
  });

  test("is no box", () => {
    expect(read(shingles, "1", "box", "bundle")).toBe("another-pack");
  });

  test("of nobody knows how many is not taken for a number of pieces", () => {
    const bundle = someMaterial("bundle", { length: "8 ft", coverage: "32 sq ft" });
    expect(read(bundle, "1", "bundle", "piece")).toBe("pieces-unknown");
    expect(read(bundle, "1", "bundle", "linear-foot")).toBe("pieces-unknown");
    expect(read(bundle, "1", "bundle", "square-foot")).toBe("32");
  });

  test("of boards bought by the piece is so many pieces, and so much of all they are", () => {
    const strapping = someMaterial("piece", { length: "8 ft", pieces: "12 pieces", weight: "2 lb" });
    expect(read(strapping, "2", "bundle", "piece")).toBe("24");
    expect(read(strapping, "1", "bundle", "linear-foot")).toBe("96");
    expect(read(strapping, "1", "bundle", "pound")).toBe("24");
    expect(read(strapping, "1", "bundle", "box")).toBe("another-pack");
  });
});

describe("a panel with a thickness category", () => {
  const sheet = someMaterial("sheet", {
    faceWidth: "48 in",
    faceLength: "96 in",
    nominalThickness: "3/4 in",
  });

  test("is twice as much on the 3/8 in basis as of surface", () => {
    expect(read(sheet, "1000", "sheet", "msf")).toBe("32");
    expect(read(sheet, "1000", "sheet", "msf-3-8")).toBe("64");
    expect(read(sheet, "1", "msf", "msf-3-8")).toBe("2");
  });

  test("is no real volume by its name, and without a category nothing on the 3/8 in basis", () => {
    expect(read(sheet, "1", "sheet", "cubic-foot")).toBe("actual-size-unknown");
    const bare = someMaterial("sheet", { faceWidth: "48 in", faceLength: "96 in", thickness: "3/4 in" });
    expect(read(bare, "1", "sheet", "msf-3-8")).toBe("nominal-size-unknown");
  });
});

describe("what covers less than its size", () => {
  test("covers by the width it covers, not by its own", () => {
    const panel = someMaterial("piece", { faceWidth: "38 in", coverageWidth: "36 in", length: "12.5 ft" });
    expect(read(panel, "1", "piece", "square-foot")).toBe("37.5");
    expect(
      read(someMaterial("linear-foot", { coverageWidth: "36 in" }), "10", "linear-foot", "square-foot"),
    ).toBe("30");
  });

  test("covers a run as stated for the whole bundle", () => {
    const caps = someMaterial("bundle", { coverageLength: "20 ft", pieces: "30 pieces" });
    expect(read(caps, "66", "linear-foot", "bundle")).toBe("3.3");
    expect(read(caps, "1", "bundle", "linear-metre")).toBe("6.096");
  });
});

describe("a bag that makes a volume", () => {
  const mix = someMaterial("bag", { yield: "0.6 cu ft", weight: "80 lb" });

  test("makes a cubic yard by forty-five", () => {
    expect(read(mix, "1", "cubic-yard", "bag")).toBe("45");
    expect(read(mix, "45", "bag", "pound")).toBe("3600");
  });
});

describe("what weighs by its size", () => {
  test("weighs by its actual section, not by its name", () => {
    const stud = lumber("2x4", "8 ft", ["1.5 in", "3.5 in"]);
    const wood = { ...stud, dimensions: { ...stud.dimensions, ...dimensions({ density: "36 pcf" }) } };
    expect(roundHalfUp(decimal(read(wood, "144", "piece", "pound")), 20).toString()).toBe("1512");
    expect(
      read(
        { ...wood, dimensions: { ...wood.dimensions, ...dimensions({ weight: "9 lb" }) } },
        "2",
        "piece",
        "pound",
      ),
    ).toBe("18");
  });

  test("without a known section weighs nothing one could tell", () => {
    expect(read(someMaterial("piece", { length: "8 ft", density: "36 pcf" }), "1", "piece", "pound")).toBe(
      "actual-size-unknown",
    );
  });

  test("is weighed or measured when it is sold loose", () => {
    const gravel = someMaterial("cubic-yard", { density: "100 pcf" });
    expect(roundHalfUp(decimal(read(gravel, "1", "cubic-yard", "pound")), 20).toString()).toBe("2700");
  });
});

test("nails by the pound are counted by their weight", () => {
  const nails = someMaterial("pound", { weight: "0.02 lb" });
  expect(read(nails, "1000", "piece", "pound")).toBe("20");
});

test("units of one measure need no dimensions", () => {
  expect(read(someMaterial("each"), "10", "square-foot", "square")).toBe("0.1");
  expect(read(someMaterial("each"), "3", "each", "each")).toBe("3");
});

describe("what can be bought", () => {
  test("is whole units, and thousandths of a thousand", () => {
    expect(purchaseStep("sheet").toString()).toBe("1");
    expect(purchaseStep("linear-foot").toString()).toBe("1");
    expect(purchaseStep("mbf").toString()).toBe("0.001");
    expect(purchaseStep("msf").toString()).toBe("0.001");
    expect(purchaseStep("msf-3-8").toString()).toBe("0.001");
  });

  test("is rounded up once", () => {
    expect(roundUpToPurchase(decimal("34.375"), "sheet").toString()).toBe("35");
    expect(roundUpToPurchase(decimal("0.53333333"), "mbf").toString()).toBe("0.534");
    expect(roundUpToPurchase(decimal("12"), "sheet").toString()).toBe("12");
  });

  test("is not one more because of a division that does not end", () => {
    const joist = lumber("2x10", "14 ft");
    const needed = convertFor(joist, { value: decimal(70), unit: "board-foot" }, "piece");
    expect(needed.ok && roundUpToPurchase(needed.value, "piece").toString()).toBe("3");
  });
});
