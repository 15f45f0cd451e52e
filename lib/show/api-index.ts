import * as z from "zod";
import type { IndexValue, ReferenceIndex } from "../indices/index-value.ts";
import { dayShape, decimalShape, exactDigits } from "./api-fields.ts";

export const referenceIndexShape = z.strictObject({
  id: z.string(),
  name: z.string(),
  series: z.string(),
  publisher: z.string(),
  base: z.string().nullable().describe("what stands at 100; null: not said"),
});

/** A reference index. */
export function apiReferenceIndex(index: ReferenceIndex): z.output<typeof referenceIndexShape> {
  const { id, name, series, publisher, base } = index;
  return { id, name, series, publisher, base };
}

export const indexValueShape = z.strictObject({
  month: dayShape.describe("the first day of the month it speaks of"),
  value: decimalShape.describe("index points, as published"),
  publishedOn: dayShape,
  preliminary: z.boolean().nullable().describe("null: not said"),
});

/** A value of an index as it was published once. */
export function apiIndexValue(one: IndexValue): z.output<typeof indexValueShape> {
  const { month, publishedOn, preliminary } = one;
  return { month, value: exactDigits(one.value), publishedOn, preliminary };
}
