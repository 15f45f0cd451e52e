import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { stockCountEntry, stockEventEntry } from "../../../lib/stock/stock-event-entry.ts";

const REQUIREMENT = "0190f2b4-7f3a-7c11-8a55-5b3a9f1f0004";

function codes(given: unknown): string[] {
  const parsed = stockEventEntry.safeParse(given);
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("an allocation names a requirement, a quantity and a day", () => {
  expect(codes({ kind: "allocated" })).toEqual(["quantity missing", "on missing", "requirementId missing"]);
  const parsed = stockEventEntry.parse({
    kind: "allocated",
    requirementId: REQUIREMENT,
    quantity: "10",
    on: "2026-03-14",
  });
  expect(parsed).toMatchObject({
    kind: "allocated",
    requirementId: REQUIREMENT,
    on: "2026-03-14",
    amount: null,
  });
});

test("a draw may be for no requirement and moves no money", () => {
  expect(codes({ kind: "drawn", quantity: "2", on: "2026-03-14" })).toEqual([]);
  expect(codes({ kind: "drawn", quantity: "2", on: "2026-03-14", amount: "5", currency: "CAD" })).toEqual([
    "amount unknown-field",
    "currency unknown-field",
  ]);
});

test("a return and a sale say what came back, which may be nothing", () => {
  expect(codes({ kind: "sold", quantity: "2", on: "2026-03-14" })).toEqual([
    "amount missing",
    "currency missing",
  ]);
  const parsed = stockEventEntry.parse({
    kind: "returned",
    quantity: "2",
    on: "2026-03-14",
    amount: "0",
    currency: "CAD",
  });
  expect(parsed.amount?.amount.isZero()).toBe(true);
});

test("a kind of its own making is refused", () => {
  expect(codes({ kind: "lost", quantity: "2", on: "2026-03-14" })).toEqual(["kind unknown-choice"]);
});

test("a count may find nothing, never less", () => {
  expect(stockCountEntry.parse({ quantity: "0", on: "2026-03-14" }).quantity.isZero()).toBe(true);
  expect(stockCountEntry.safeParse({ quantity: "-1", on: "2026-03-14" }).success).toBe(false);
});
