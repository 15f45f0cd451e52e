import { expect, test } from "vitest";
import * as z from "zod";
import words from "../../app/_words/en.json" with { type: "json" };
import { FAULT_WORDS, spoken } from "../../app/api/v1/_answers/fault-words.ts";
import { amount, fields, listOf, name } from "../../lib/entry-fields.ts";
import { FAULT_CODES, faultsOf } from "../../lib/fault.ts";

function faults(schema: z.ZodType, given: unknown): string[] {
  const parsed = schema.safeParse(given);
  return parsed.success ? [] : faultsOf(parsed.error).map(({ path, code }) => `${path} ${code}`);
}

test("every fault has words on screen, and no words are left over", () => {
  expect(Object.keys(words.faults).sort()).toEqual([...FAULT_CODES].sort());
  expect(Object.values(words.faults).every((text) => text.trim() !== "")).toBe(true);
});

test("every fault has words in the interface", () => {
  expect(Object.keys(FAULT_WORDS).sort()).toEqual([...FAULT_CODES].sort());
});

test("the interface names the field and says what is wrong with it", () => {
  expect(spoken({ path: "per.unit", code: "unknown-unit" }).message).toMatch(/^per\.unit .+/);
  expect(spoken({ path: "", code: "not-an-object" }).message).toMatch(/^the request .+/);
});

test("the values of a fault are handed on", () => {
  const values = { free: "4" };
  expect(spoken({ path: "quantity", code: "more-than-free", values }).values).toEqual(values);
});

test("every fault of an entry is named, in the order of its fields, none hidden by the first", () => {
  const entry = fields({ name: name(), amount: amount(), rows: listOf(fields({ name: name() })) });
  expect(faults(entry, { amount: "-1", rows: [{ name: "" }, { name: "ok" }, {}] })).toEqual([
    "name missing",
    "amount not-positive",
    "rows.0.name missing",
    "rows.2.name missing",
  ]);
});

test("an unknown field is named by its own path", () => {
  expect(faults(fields({ a: fields({ b: name() }) }), { a: { b: "x", c: 1 }, d: 2 })).toEqual([
    "a.c unknown-field",
    "d unknown-field",
  ]);
});

test("what is not an object is said to be none", () => {
  expect(faults(fields({ name: name() }), "text")).toEqual([" not-an-object"]);
});

test("a plain zod choice speaks our codes", () => {
  expect(faults(z.object({ base: z.enum(["a"]) }), { base: "b" })).toEqual(["base unknown-choice"]);
});
