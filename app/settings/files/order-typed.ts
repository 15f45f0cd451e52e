import type { DayOrder } from "../../../lib/files/day-shapes.ts";
import { typed } from "../../_forms/typed.ts";

/** Which way round the days of a file are written, where the person said so. */
export function orderTyped(form: FormData): DayOrder | undefined {
  const order = typed(form, "order");
  return order === "month-first" || order === "day-first" ? order : undefined;
}
