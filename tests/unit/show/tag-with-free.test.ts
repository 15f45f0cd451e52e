import { expect, test } from "vitest";
import { tagWithFree } from "../../../lib/show/tag-with-free.ts";

const tag = {
  amount: "10.00",
  storeId: "near",
  materialId: "sheet",
  perQuantity: "1",
  unit: "sheet",
  taxIncluded: false,
} as const;
const read = (paid: string | null, free: string | null) => {
  const { amount, perQuantity } = tagWithFree(tag, paid, free);
  return [amount, perQuantity];
};

test("buy 2, get 1 free at 10.00 is read as 20.00 for 3 while it is typed", () => {
  expect(read("2", "1")).toEqual(["20", "3"]);
});

test("until both are typed, and above zero, the tag stays as it is", () => {
  for (const [paid, free] of [
    [null, null],
    ["2", null],
    [null, "1"],
    ["", "1"],
    ["2", "0"],
  ] as const)
    expect(read(paid, free)).toEqual(["10.00", "1"]);
});
