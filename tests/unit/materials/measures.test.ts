import { expect, test } from "vitest";
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
