import { expect, test } from "vitest";
import type { Material } from "../../../lib/materials/material.ts";
import { measuresOf } from "../../../lib/materials/measures.ts";
import { lumber, someMaterial } from "../../support/some-material.ts";

test("a panel's price can be read by area and by the thousand square feet", () => {
  const sheet = someMaterial("sheet", { faceWidth: "4 ft", faceLength: "8 ft" }, { category: "sheet-goods" });
  expect(measuresOf(sheet)).toEqual(["sheet", "square-foot", "square-metre", "msf"]);
});

test("a board's price can be read by length and by board measure", () => {
  expect(measuresOf(lumber("2x4", "8 ft"))).toEqual([
    "piece",
    "linear-foot",
    "linear-metre",
    "board-foot",
    "mbf",
  ]);
});

test("a door's price is a price per door, whatever its size", () => {
  const door = someMaterial("each", { faceWidth: "32 in", faceLength: "80 in" }, { category: "doors" });
  expect(measuresOf(door)).toEqual(["each"]);
});

test("without dimensions there is only the purchase unit", () => {
  expect(measuresOf(someMaterial("sheet", {}, { category: "sheet-goods" }))).toEqual(["sheet"]);
});

test("the purchase unit is not named twice", () => {
  const felt = someMaterial("square", { coverage: "1 square" }, { category: "roofing" });
  expect(measuresOf(felt)).toEqual(["square", "square-foot", "square-metre"]);
});

test("a panel with a thickness category can be read on the 3/8 in basis too", () => {
  const sizes = { faceWidth: "4 ft", faceLength: "8 ft", nominalThickness: "1/2 in" };
  const sheet = someMaterial("sheet", sizes, { category: "sheet-goods" });
  expect(measuresOf(sheet)).toEqual(["sheet", "square-foot", "square-metre", "msf", "msf-3-8"]);
});

test("a bag of concrete can be read by what it makes and what it weighs", () => {
  const mix = someMaterial("bag", { yield: "0.6 cu ft", weight: "80 lb" }, { category: "masonry" });
  expect(measuresOf(mix)).toEqual(["bag", "kilogram", "pound", "cubic-foot", "cubic-yard", "cubic-metre"]);
});

test("a box or bag of which the pieces are known can be read by the piece", () => {
  const written = { pieces: "11 pieces", coverage: "88 sq ft" };
  const measures = (category: Material["category"]) => measuresOf(someMaterial("box", written, { category }));
  expect(
    (["insulation", "siding", "roofing", "other"] as const).map((one) => measures(one).includes("piece")),
  ).toEqual([true, true, true, true]);
});

test("what is poured out of a can is read by the litre", () => {
  const paint = someMaterial("each", { yield: "3.78 l" }, { category: "other" });
  expect(measuresOf(paint)).toEqual(["each", "litre"]);
});
