import type { LocalDate } from "../calendar/local-date.ts";
import type { StockEvent } from "./lot.ts";

/**
 * What is done and undone as one: moved from one requirement to another, a place counted, the money for a place shared, what
 * of a draw came back, the left-overs of a project.
 */
export const STOCK_ACT_KINDS = ["moved-between", "counted", "storage-money", "unused", "left-overs"] as const;
export type StockActKind = (typeof STOCK_ACT_KINDS)[number];

/** events: what it made of lots; undoes: ids of earlier events it took back. */
export type StockAct = Readonly<{
  id: string;
  kind: StockActKind;
  on: LocalDate;
  reason: string | null;
  events: readonly StockEvent[];
  undoes: readonly string[];
  undoneAt: string | null;
}>;
