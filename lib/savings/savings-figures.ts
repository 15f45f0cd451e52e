import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";
import type { Money } from "../money/money.ts";
import type { Terms } from "../prices/observation.ts";
import type { LotOrigin } from "../stock/lot.ts";

export const SAVING_KINDS = ["drawn", "returned", "sold", "written-off", "held"] as const;
export type SavingKind = (typeof SAVING_KINDS)[number];
export type SavingState = "realised" | "unrealised" | "not-known";

/** One quantity of one lot, counted once (R10). All money home currency, rounded to the minor unit; parts are sums and differences of the four rounded amounts. */
export type SavingRow = Readonly<{
  lotId: string;
  eventId: string | null;
  materialId: string;
  requirementId: string | null;
  projectId: string | null;
  kind: SavingKind;
  state: SavingState;
  quantity: Decimal;
  acquiredOn: LocalDate;
  /** Day of the draw, return, sale or write-off; null while held. */
  on: LocalDate | null;
  /** Cost of this quantity out of the lot; null when its tax or rate is not known (then the saving is not either). */
  paid: Money | null;
  goingAtAcquisition: Money | null;
  goingAtDraw: Money | null;
  /** A going price is not a fresh one (interpolated, or an older sighting): a later sighting may still change it. */
  interpolated: boolean;
  /** Refund or proceeds, for returned and sold. */
  received: Money | null;
  discount: Money | null;
  timing: Money | null;
  /** null: no money rate entered ("before carrying cost"). */
  carrying: Money | null;
  saving: Money | null;
  /** Against the best offer in force on the day, specials included. */
  strictSaving: Money | null;
  /** What made the discount. */
  source: LotOrigin | Terms | "choice-of-store";
  /** What was written off was missed at a count. */
  missing: boolean;
  beforeCarrying: boolean;
}>;

/** Sums of rows whose saving is known: saving = discount + timing + unsplit - carrying, exactly. */
export type SavingTotals = Readonly<{
  saving: Money;
  /** Over the rows whose strict figure is known too. */
  strictSaving: Money;
  discount: Money;
  timing: Money;
  /** Before carrying, of rows without a split: returned, sold, written off, going price at acquisition not known. */
  unsplit: Money;
  carrying: Money;
  rows: number;
  notKnown: number;
  /** Rows with a saving and no strict figure: no offer in force for the requirement's quantity. */
  strictNotKnown: number;
}>;
export type SavingsReport = Readonly<{
  rows: readonly SavingRow[];
  realised: SavingTotals;
  unrealised: SavingTotals;
  byKind: Readonly<Partial<Record<SavingKind, SavingTotals>>>;
}>;
