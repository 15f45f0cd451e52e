import { expect, test } from "vitest";
import { apiMaterial } from "../../../lib/show/api-material.ts";
import { someMaterial } from "../../support/some-material.ts";

const coded = (purchaseUnit: "sheet" | "piece" | "bundle" | "msf" | "mbf") =>
  apiMaterial(someMaterial(purchaseUnit)).purchaseUnitRec20;

// UN/CEFACT Recommendation 20, revision 17e: sheet, bundle and piece by pack have deleted codes only.
test("a material's purchase unit is told in a live code of Recommendation 20, a pack as articles", () => {
  expect(coded("sheet")).toEqual({ code: "EA", value: "1", isPacked: false });
  expect(coded("bundle")).toEqual({ code: "EA", value: "1", isPacked: true });
  expect(coded("msf")).toEqual({ code: "FTK", value: "1000", isPacked: false });
});
