import type { AmountWords } from "../_ui/amount-field.client.tsx";
import type { Choice } from "../_ui/choice-field.client.tsx";
import type { LotWords } from "./lot-words.ts";

/** A material to choose, with what a quantity of it is counted in. */
export type LotMaterial = Readonly<{ value: string; label: string; unit: string }>;
/** A store to choose, with its currency and whether its prices include tax. */
export type LotStore = Readonly<{ value: string; label: string; currency: string; taxIncluded: boolean }>;
/** A need to set the lot aside for, with the materials that serve it. */
export type LotNeed = Readonly<{
  value: string;
  label: string;
  materialIds: readonly string[];
  open: string;
}>;

export type LotFieldsProps = Readonly<{
  materials: readonly LotMaterial[];
  stores: readonly LotStore[];
  needs: readonly LotNeed[];
  origins: readonly Choice[];
  terms: readonly Choice[];
  currencies: readonly Choice[];
  regions: readonly Choice[];
  /** The price of a sighting is copied: nothing about the receipt is asked. */
  copied: boolean;
  start: Readonly<{ materialId: string; needId: string; quantity: string; currency: string; today: string }>;
  words: LotWords;
  amountWords: AmountWords;
  locale: string;
}>;
