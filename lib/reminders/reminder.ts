import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Money } from "../money/money.ts";

export const REMINDER_KINDS = [
  "price-at-or-below",
  "offer-lapsing",
  "price-stale",
  "buy-by",
  "return-by",
  "adjust-by",
  "keeps-until",
] as const;
export type ReminderKind = (typeof REMINDER_KINDS)[number];

/**
 * One thing to be reminded of. key: the same as long as it is the same thing. on: the day it is about: the day a price was
 * seen or went stale, else the last day to act. each: home currency, all in, per unit, unrounded. money: what rests on it, home
 * currency, unrounded. quantity: purchase units, what it is about. null: does not apply.
 */
export type Reminder = Readonly<{
  key: string;
  kind: ReminderKind;
  on: LocalDate;
  materialId: string;
  unit: PurchaseUnit;
  storeId: string | null;
  projectId: string | null;
  requirementId: string | null;
  lotId: string | null;
  each: Money | null;
  wanted: Money | null;
  money: Money | null;
  quantity: Decimal | null;
}>;

/** What the workspace has asked to be told. wanted: by material, home currency, all in, per purchase unit. lapseDays: calendar days. */
export type Wishes = Readonly<{ wanted: ReadonlyMap<string, Money>; lapseDays: number }>;

type Said = Pick<Reminder, "kind" | "on" | "materialId" | "unit"> & Partial<Reminder>;

/** A reminder of the ids that make it what it is. key: kind, ids and day, e.g. "return-by.0190….2026-04-01". */
export function reminderOf(ids: readonly string[], said: Said): Reminder {
  return {
    storeId: null,
    projectId: null,
    requirementId: null,
    lotId: null,
    each: null,
    wanted: null,
    money: null,
    quantity: null,
    ...said,
    key: [said.kind, ...ids, said.on].join("."),
  };
}
