import { expect, test } from "vitest";
import { lastPaid } from "../../../lib/show/last-paid.ts";
import { day, SHEET, TODAY } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

const requirements = [needOf("a", revisionOf(10))];

test("the last price paid is the newest lot's cost for one, with the projects it went to", () => {
  const facts = factsOf({
    requirements,
    lots: [lotOf(10, 200), lotOf(3, 70, { id: "new", orderedOn: day("2026-02-01") })],
    events: [eventOf("allocated", 2, "2026-02-02", { lotId: "new", requirementId: "a" })],
  });
  const paid = lastPaid(facts, SHEET, TODAY);
  // 70 / 3, unrounded
  expect(paid?.each.amount.toFixed(6)).toBe("23.333333");
  expect(paid).toMatchObject({ lotId: "new", on: "2026-02-01", projectIds: ["job"] });
});

test("salvage and left-overs are not what is paid for one", () => {
  const facts = factsOf({
    lots: [
      lotOf(10, 200),
      lotOf(1, 0, { id: "found", origin: "salvaged", orderedOn: day("2026-02-01") }),
      lotOf(1, 0, { id: "rest", origin: "left-over", orderedOn: day("2026-02-02") }),
    ],
  });
  expect(lastPaid(facts, SHEET, TODAY)?.lotId).toBe("lot");
});

test("a lot bought after the day was not paid yet on it", () => {
  const facts = factsOf({ lots: [lotOf(10, 200)] });
  expect(lastPaid(facts, SHEET, day("2026-01-04"))).toBeNull();
  expect(lastPaid(facts, SHEET, day("2026-01-05"))?.lotId).toBe("lot");
});

test("a cost that cannot be said is no last price", () => {
  expect(lastPaid(factsOf({ lots: [lotOf(10, 200, { storeId: null })] }), SHEET, TODAY)).toBeNull();
});
