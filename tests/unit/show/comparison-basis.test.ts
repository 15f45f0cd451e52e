import { createTranslator } from "next-intl";
import { describe, expect, test } from "vitest";
import words from "../../../app/_words/en.json";
import { logWords } from "../../../app/log/words.ts";
import { decimal, ONE } from "../../../lib/decimal.ts";
import { type ComparedFor, comparisonBasis } from "../../../lib/show/comparison-basis.ts";
import { day, valuation } from "../../support/price-example.ts";

const DAY = day("2026-11-25");
const registered = valuation({
  registrations: [
    { tax: "GST", from: null, until: day("2026-10-31") },
    { tax: "HST", from: day("2026-11-01"), until: null },
    { tax: "QST", from: null, until: null },
  ],
});

function said(compared: ComparedFor, unit: string, given = valuation(), on = DAY) {
  const t = createTranslator({ locale: "en-CA", messages: words, namespace: "comparison" });
  return t("line", { ...comparisonBasis(compared, given, on, "en-CA"), unit });
}

describe("the basis of a comparison is said in one sentence", () => {
  test("for a quantity: how much, tax, currency, day, delivery", () => {
    expect(said({ quantity: decimal(38), unit: "sheet" }, "sheets")).toBe(
      "For 38 sheets, all in (tax included as cost), CAD, on Nov 25, 2026; delivery and other charges per order apart.",
    );
  });

  test("for one", () => {
    expect(said({ quantity: ONE, unit: "sheet" }, "sheet")).toMatch(/^Per sheet, all in/);
    expect(said({ quantity: ONE, unit: "each" }, "each")).toMatch(/^Each, all in/);
  });

  test("for what is open, or required", () => {
    expect([said("open", ""), said("required", "")].map((one) => one.split(",")[0])).toEqual([
      "For what is still open",
      "For what is required",
    ]);
  });

  test("for last prices: each as of its own day, and none of today", () => {
    const sentence = said("last-seen", "");
    expect(sentence).toBe(
      "Each per the unit it is bought by, all in (tax included as cost), CAD, as of the day each was seen; delivery and other charges per order apart.",
    );
    expect(sentence).not.toContain("2026");
  });

  test("names the taxes that come back on that day, and not those of another day", () => {
    const taxes = (on: string) => comparisonBasis("open", registered, day(on), "en-CA").taxes;
    expect([taxes("2026-11-25"), taxes("2026-10-31")]).toEqual(["HST and QST", "GST and QST"]);
    expect(said("open", "", registered)).toContain(
      "all in (tax included as cost, but not the HST and QST you get back), CAD",
    );
  });

  test("in another home currency names that one", () => {
    const given = valuation({ homeCurrency: "EUR" });
    expect(said("open", "", given)).toContain(", EUR, on ");
  });
});

test("the aisle form says the same in its own words", () => {
  const aisle = (compared: ComparedFor, given = valuation()) =>
    logWords("en-CA").basis(comparisonBasis(compared, given, DAY, "en-CA"));
  const many = { quantity: decimal(38), unit: "sheet" } as const;
  const one = { quantity: ONE, unit: "sheet" } as const;
  expect(aisle(many)).toBe(said(many, "sheets"));
  expect(aisle(many, registered)).toBe(said(many, "sheets", registered));
  expect(aisle(one)).toBe(said(one, "sheet"));
  expect(aisle({ ...one, unit: "each" })).toBe(said({ ...one, unit: "each" }, "each"));
});
