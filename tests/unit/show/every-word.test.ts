import { expect, test } from "vitest";
import { hasEveryWord } from "../../../lib/show/every-word.ts";

test("words are found in any order and in part", () => {
  expect(hasEveryWord("Gypsum board 15.5 mm", "15 gyps")).toBe(true);
  expect(hasEveryWord("Gypsum board 15.5 mm", "gyps 12")).toBe(false);
});

test("accents and capitals make no difference", () => {
  expect(hasEveryWord("Contreplaqué d’épinette", "EPINETTE contreplaque")).toBe(true);
});

test("nothing typed finds everything", () => {
  expect(hasEveryWord("Stud 2x4", "  ")).toBe(true);
});
