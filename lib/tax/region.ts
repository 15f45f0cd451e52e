import type { LocalDate } from "../calendar/local-date.ts";
import type { Decimal } from "../decimal.ts";

/** One dated part of a region's tax. base "price plus other tax": on the price and the other components (old QST). */
export type TaxComponent = Readonly<{
  name: string;
  ratePercent: Decimal;
  from: LocalDate;
  until: LocalDate | null;
  base: "price" | "price-plus-other-tax";
  /** A buyer registered for this tax gets it back. */
  recoverable: boolean;
  evidence: string;
  /** Shown with a mark until the user confirms it. */
  fromMemory: boolean;
}>;

/** code: ISO 3166-2 ("CA-NS", "US-ME") or one of the workspace's own. completeFrom: before it the tax is not known (R3). */
export type TaxRegion = Readonly<{
  code: string;
  name: string;
  country: string | null;
  completeFrom: LocalDate;
  components: readonly TaxComponent[];
}>;

/** Registered for a recoverable tax from/until (open when null). GST and HST are one registration in Canada. */
export type Registration = Readonly<{ tax: string; from: LocalDate | null; until: LocalDate | null }>;
