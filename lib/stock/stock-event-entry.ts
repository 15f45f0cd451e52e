import * as z from "zod";
import type { Decimal } from "../decimal.ts";
import { amountOrZero, currency, day, fields, id, note, quantity, quantityOrZero } from "../entry-fields.ts";
import { type Money, money } from "../money/money.ts";
import type { StockEvent } from "./lot.ts";

const when = { on: day(), reason: note().nullable().default(null) };
const taken = { quantity: quantity(), ...when };
const forOne = { ...taken, requirementId: id() };
const forMoney = { ...taken, amount: amountOrZero(), currency: currency() };

/** What can be entered on a lot, by kind. amount: refund or proceeds for the whole quantity. */
export const STOCK_EVENT_FIELDS = {
  allocated: forOne,
  released: forOne,
  drawn: { ...taken, requirementId: id().nullable().default(null) },
  returned: forMoney,
  sold: forMoney,
  "written-off": taken,
  found: taken,
  missing: taken,
} as const;

type Entered = Omit<StockEvent, "id" | "lotId" | "sequence">;
type Given = Readonly<{
  kind: StockEvent["kind"];
  quantity: Decimal;
  on: StockEvent["on"];
  reason: string | null;
  requirementId?: string | null;
  amount?: Money["amount"];
  currency?: Money["currency"];
}>;

function entered({
  kind,
  quantity: taking,
  on,
  reason,
  requirementId,
  amount,
  currency: code,
}: Given): Entered {
  const received = amount === undefined || code === undefined ? null : money(amount, code);
  return { kind, quantity: taking, on, requirementId: requirementId ?? null, amount: received, reason };
}

function entryOf<K extends StockEvent["kind"]>(kind: K) {
  return fields({ kind: z.literal(kind), ...STOCK_EVENT_FIELDS[kind] });
}

/** One thing that happened to a lot: the fields of StockEvent without its ids. Faults: unknown-choice at kind. */
export const stockEventEntry = z
  .discriminatedUnion(
    "kind",
    [
      entryOf("allocated"),
      entryOf("released"),
      entryOf("drawn"),
      entryOf("returned"),
      entryOf("sold"),
      entryOf("written-off"),
      entryOf("found"),
      entryOf("missing"),
    ],
    { error: "unknown-choice" },
  )
  .transform((given) => entered(given as Given));
export type StockEventEntry = z.output<typeof stockEventEntry>;

/** A count: how many of a lot are there on a day. What is found or missing follows from it. */
export const stockCountEntry = fields({ quantity: quantityOrZero(), ...when });
export type StockCountEntry = z.output<typeof stockCountEntry>;
