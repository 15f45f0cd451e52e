import { expect, test } from "vitest";
import { totalsText } from "../../../lib/show/exposure-totals-text.ts";
import { cad, totals } from "../../support/exposure-example.ts";

test("over budget is a size with its word, never a minus alone", () => {
  const text = totalsText(totals({ variance: cad("-31.49") }), "en-CA");
  expect(text.variance).toEqual({ side: "over", amount: "31.49", about: "31" });
});

test("exactly on budget is neither under nor over", () => {
  expect(totalsText(totals({ variance: cad("0") }), "en-CA").variance?.side).toBe("on");
});

test("what is still to pay is the cost to finish with the charges per order", () => {
  const text = totalsText(totals({ perOrderCharges: cad("96.90") }), "en-CA");
  expect([text.costToFinish, text.perOrderCharges, text.toFinishWithCharges]).toEqual([
    "1,058.65",
    "96.90",
    "1,155.55",
  ]);
});

test("amounts of nothing are left out where they would only be noise", () => {
  const text = totalsText(totals(), "en-CA");
  expect([text.perOrderCharges, text.restsOnStale, text.restsOnLapsing]).toEqual([null, null, null]);
});

test("what is not known stays not known", () => {
  const text = totalsText(totals({ budget: null, variance: null, unrealisedSaving: null }), "en-CA");
  expect([text.budget, text.variance, text.unrealisedSaving]).toEqual([null, null, null]);
});

test("nothing is left to buy only when no line lacks a price", () => {
  const none = { costToFinish: cad("0") };
  expect(totalsText(totals(none), "en-CA").nothingToBuy).toBe(true);
  expect(totalsText(totals({ ...none, unpricedLines: 1 }), "en-CA").nothingToBuy).toBe(false);
});
