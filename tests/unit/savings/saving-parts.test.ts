import { describe, expect, test } from "vitest";
import { beforeCarrying, disposalSaving, savingParts } from "../../../lib/savings/saving-parts.ts";
import { cad } from "../../support/stock-example.ts";

const known = {
  paid: cad("296.00"),
  goingAtAcquisition: cad("320.00"),
  goingAtDraw: cad("341.50"),
  carrying: cad("2.10"),
};

describe("a saving", () => {
  test("is discount and timing less carrying, exactly", () => {
    expect(savingParts(known)).toEqual({
      discount: cad("24.00"),
      timing: cad("21.50"),
      saving: cad("43.40"),
    });
  });

  test("may be a loss, and is shown in full", () => {
    expect(savingParts({ ...known, goingAtDraw: cad("280.00") })).toMatchObject({
      timing: cad("-40.00"),
      saving: cad("-18.10"),
    });
  });

  test("stands without its split where the going price at acquisition is not known", () => {
    expect(savingParts({ ...known, goingAtAcquisition: null })).toEqual({
      discount: null,
      timing: null,
      saving: cad("43.40"),
    });
  });

  test("is not known where the going price at the draw is not, never zero", () => {
    expect(savingParts({ ...known, goingAtDraw: null })).toEqual({
      discount: null,
      timing: null,
      saving: null,
    });
  });

  test("is not known where the cost is not", () => {
    expect(savingParts({ ...known, paid: null }).saving).toBe(null);
  });

  test("is before carrying cost where there is no money rate", () => {
    expect(savingParts({ ...known, carrying: null }).saving).toEqual(cad("45.50"));
  });
});

describe("what was made on goods that left otherwise", () => {
  test("is what was received less cost and carrying", () => {
    expect(disposalSaving(cad(34), cad(40), cad(1))).toEqual(cad(-7));
  });

  test("is not known where the amount received cannot be read in home currency", () => {
    expect(disposalSaving(null, cad(40), cad(1))).toBe(null);
  });
});

test("before carrying, a saving is what it would be were money free", () => {
  expect([beforeCarrying(cad(7), cad(2)), beforeCarrying(cad(7), null)]).toEqual([cad(9), cad(7)]);
});
