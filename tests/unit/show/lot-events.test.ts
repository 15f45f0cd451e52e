import { expect, test } from "vitest";
import { conservationText } from "../../../lib/show/conservation-text.ts";
import { lotEvents } from "../../../lib/show/lot-events.ts";
import { TODAY } from "../../support/price-example.ts";
import { cad, eventOf, lotOf } from "../../support/stock-example.ts";

const forA = { requirementId: "a" };
const lot = lotOf(10, 200);
const allocated = eventOf("allocated", 6, "2026-01-06", forA);
const drawn = eventOf("drawn", 2, "2026-01-06", forA);
const sold = eventOf("sold", 1, "2026-01-20", { amount: cad(15), reason: "to a neighbour" });

test("each event says what was free and what was there before and after it, the newest first", () => {
  const events = lotEvents(lot, [drawn, sold, allocated], "en-CA");
  expect(events.map(({ kind, free, there }) => [kind, free, there])).toEqual([
    ["sold", { before: "4", after: "3" }, { before: "8", after: "7" }],
    ["drawn", { before: "4", after: "4" }, { before: "10", after: "8" }],
    ["allocated", { before: "10", after: "4" }, { before: "10", after: "10" }],
  ]);
});

test("an undone event stays readable and changed nothing", () => {
  const undone = { ...sold, undoneAt: "2026-01-21T10:00:00Z" };
  const [first, second] = lotEvents(lot, [allocated, drawn, undone], "en-CA");
  expect(first).toMatchObject({ kind: "sold", undone: true, free: null, there: null });
  expect(second).toMatchObject({ kind: "drawn", undone: false, there: { before: "10", after: "8" } });
});

test("proceeds stand with their currency, and the reason as given", () => {
  const [first] = lotEvents(lot, [sold], "en-CA");
  expect(first?.amount?.replace("\u00a0", " ")).toBe("CAD 15.00");
  expect(first?.reason).toBe("to a neighbour");
});

test("all of a lot is accounted for, and what is nothing is not said", () => {
  expect(conservationText(lot, [allocated, drawn, sold], TODAY, "en-CA")).toEqual({
    acquired: "10",
    found: null,
    parts: [
      { part: "allocated", quantity: "4" },
      { part: "free", quantity: "3" },
      { part: "drawn", quantity: "2" },
      { part: "sold", quantity: "1" },
    ],
  });
});

test("what was used for no project counts as used, and what was found is said beside what was acquired", () => {
  const events = [eventOf("drawn", 3, "2026-01-06"), eventOf("found", 1, "2026-01-07")];
  expect(conservationText(lot, events, TODAY, "en-CA")).toEqual({
    acquired: "10",
    found: "1",
    parts: [
      { part: "free", quantity: "8" },
      { part: "drawn", quantity: "3" },
    ],
  });
});
