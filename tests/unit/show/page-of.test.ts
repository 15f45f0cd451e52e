import { expect, test } from "vitest";
import { pageOf } from "../../../lib/show/page-of.ts";

const seven = [1, 2, 3, 4, 5, 6, 7];

test("the second page of three each", () => {
  expect(pageOf(seven, "2", 3)).toEqual({ items: [4, 5, 6], number: 2, of: 3, from: 4, until: 6 });
});

test("the last page holds what is left", () => {
  expect(pageOf(seven, "3", 3)).toMatchObject({ items: [7], from: 7, until: 7 });
});

test.each([undefined, "0", "-1", "two", "1.5"])("%s is no page: the first is shown", (wanted) => {
  expect(pageOf(seven, wanted, 3).number).toBe(1);
});

test("past the end is the last page", () => {
  expect(pageOf(seven, "99", 3).number).toBe(3);
});

test("a list of nothing has one empty page", () => {
  expect(pageOf([], "4", 3)).toEqual({ items: [], number: 1, of: 1, from: 0, until: 0 });
});
