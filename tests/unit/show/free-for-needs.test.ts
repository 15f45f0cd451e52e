import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { freeForNeeds } from "../../../lib/show/free-for-needs.ts";
import type { FreeLot } from "../../../lib/show/free-lots.ts";
import { DAY, line } from "../../support/exposure-example.ts";

const lot = (lotId: string, freeExact: string, materialId = "plywood"): FreeLot => ({
  lotId,
  materialId,
  free: freeExact,
  freeExact,
  orderedOn: DAY,
  storedAt: null,
  origin: "bought",
  used: false,
});
const need = (requirementId: string, open: string, materialId = "plywood") =>
  line({ requirementId, materialId, open: decimal(open) });
const said = (...given: Parameters<typeof freeForNeeds>) =>
  freeForNeeds(...given).map((one) => `${one.requirementId}: ${one.quantity.exact} of ${one.lotId}`);

test("free stock is offered up to what is open, the oldest lot first", () => {
  expect(said([need("a", "7")], [lot("old", "5"), lot("new", "9")], "en-CA")).toEqual([
    "a: 5 of old",
    "a: 2 of new",
  ]);
});

test("stock offered to one need is not offered to the next", () => {
  expect(said([need("a", "4"), need("b", "4")], [lot("old", "5")], "en-CA")).toEqual([
    "a: 4 of old",
    "b: 1 of old",
  ]);
});

test("nothing is offered where nothing is open, and nothing of another material", () => {
  expect(said([need("a", "0"), need("b", "2")], [lot("studs", "5", "stud")], "en-CA")).toEqual([]);
});
