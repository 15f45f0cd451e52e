import * as z from "zod";
import { type Decimal, ZERO } from "../decimal.ts";
import {
  amount,
  amountOrZero,
  currency,
  day,
  fields,
  id,
  note,
  quantity,
  quantityOrZero,
} from "../entry-fields.ts";
import { type Money, money } from "../money/money.ts";
import type { StockEvent } from "./lot.ts";

const when = { on: day(), reason: note().nullable().default(null) };
const taken = { quantity: quantity(), ...when };
const placeId = id().nullable().default(null);
/** What leaves names the place it is taken from, what is found the place it lies in, if anybody said. */
const inPlace = { ...taken, placeId };
const forOne = { ...taken, requirementId: id() };
const forMoney = { ...inPlace, amount: amountOrZero(), currency: currency() };
const cost = fields({ amount: amount(), currency: currency() }).nullable().default(null);

/**
 * What can be entered on a lot, by kind. amount: refund or proceeds for the whole quantity; of `stored` what storing the lot
 * cost. moved: to placeId (null: on site), from fromPlaceId (null: by the rule of `lyingOn`), cost: what moving it cost.
 */
export const STOCK_EVENT_FIELDS = {
  allocated: forOne,
  released: forOne,
  drawn: { ...inPlace, requirementId: id().nullable().default(null) },
  returned: forMoney,
  sold: forMoney,
  "written-off": inPlace,
  found: inPlace,
  missing: inPlace,
  moved: { ...taken, placeId, fromPlaceId: placeId, cost },
  stored: { ...when, amount: amount(), currency: currency(), placeId },
} as const;

type Entered = Omit<StockEvent, "id" | "lotId" | "sequence" | "actId">;
type Given = Readonly<{
  kind: StockEvent["kind"];
  quantity?: Decimal;
  on: StockEvent["on"];
  reason: string | null;
  requirementId?: string | null;
  placeId?: string | null;
  fromPlaceId?: string | null;
  amount?: Money["amount"];
  currency?: Money["currency"];
  cost?: Readonly<{ amount: Money["amount"]; currency: Money["currency"] }> | null;
}>;

function entered({ kind, on, reason, ...given }: Given): Entered {
  const { amount: asked, currency: code } = given.cost ?? given;
  return {
    kind,
    quantity: given.quantity ?? ZERO,
    on,
    requirementId: given.requirementId ?? null,
    amount: asked === undefined || code === undefined ? null : money(asked, code),
    reason,
    placeId: given.placeId ?? null,
    fromPlaceId: given.fromPlaceId ?? null,
  };
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
      entryOf("moved"),
      entryOf("stored"),
    ],
    { error: "unknown-choice" },
  )
  .transform((given) => entered(given as Given));
export type StockEventEntry = z.output<typeof stockEventEntry>;

/** An event that says nothing of places. */
export const NO_PLACE = { placeId: null, fromPlaceId: null } as const;

/** A count: how many of a lot are there on a day. What is found or missing follows from it. */
export const stockCountEntry = fields({ quantity: quantityOrZero(), ...when });
export type StockCountEntry = z.output<typeof stockCountEntry>;
