import { expect, test } from "vitest";
import { fieldChanges, nameOfChanged } from "../../../lib/show/change-rows.ts";

test("only the fields that differ are told, in plain words", () => {
  const before = { id: "1", name: "Stud", recheck_days: 30, note: null };
  expect(fieldChanges({ before, after: { ...before, recheck_days: 14 } })).toEqual([
    { field: "recheck days", before: "30", after: "14" },
  ]);
});

test("of something new every field that has a value is told", () => {
  expect(fieldChanges({ before: null, after: { id: "1", name: "Stud", note: null } })).toEqual([
    { field: "name", before: null, after: "Stud" },
  ]);
});

test("amounts are told as stored, lists and sizes as they are written", () => {
  const change = fieldChanges({
    before: null,
    after: { amount: "0.034567", dimensions: { length: "8 ft" } },
  });
  expect(change.map(({ after }) => after)).toEqual(["0.034567", '{"length":"8 ft"}']);
});

test("a thing is named by its name, also when it is gone", () => {
  expect(nameOfChanged({ before: { name: "Mill Road Yard" }, after: null })).toBe("Mill Road Yard");
  expect(nameOfChanged({ before: null, after: { rate: "1.37" } })).toBeNull();
});
