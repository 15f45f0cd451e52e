import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { savingsAsked, savingsQuery } from "../../../lib/show/savings-asked.ts";
import { percentOfShare, shareOfPercent } from "../../../lib/show/share-typed.ts";
import { day } from "../../support/price-example.ts";

test("what is no day, and what is empty, narrows nothing", () => {
  expect(savingsAsked({ from: "2026-13-40", until: "", project: undefined })).toEqual({
    from: null,
    until: null,
    projectId: null,
    materialId: null,
    currency: null,
    view: "project",
  });
  expect(savingsAsked({ from: "2026-01-01" }).from).toBe("2026-01-01");
});

test("a currency is read in any case, and one that ISO 4217 does not have is none", () => {
  expect([savingsAsked({ currency: "usd" }).currency, savingsAsked({ currency: "XYZ" }).currency]).toEqual([
    "USD",
    null,
  ]);
});

test("the address of a question says only what is asked, and is read as the same question again", () => {
  const asked = savingsAsked({ from: "2026-01-01", project: "job", by: "month", currency: "USD" });
  const address = savingsQuery(asked, day("2026-03-02"));
  expect(address).toBe("?from=2026-01-01&project=job&currency=USD&by=month&asOf=2026-03-02");
  expect(savingsAsked(Object.fromEntries(new URLSearchParams(address)))).toEqual(asked);
  expect(savingsQuery(savingsAsked({}), null)).toBe("");
  expect(savingsQuery(asked, null, { by: undefined, project: undefined })).toBe(
    "?from=2026-01-01&currency=USD",
  );
});

test("a percentage typed is a share of one, and what is no number stays as typed", () => {
  expect([shareOfPercent("50"), shareOfPercent("12.5"), shareOfPercent("half")]).toEqual([
    "0.5",
    "0.125",
    "half",
  ]);
});

test("a share of one reads as a percentage", () => {
  expect(percentOfShare(decimal("0.5"), "en-CA")).toBe("50%");
});
