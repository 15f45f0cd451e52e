import type { AisleFacts } from "../../lib/show/aisle-facts.ts";
import type { AmountWords } from "../_ui/amount-field.client.tsx";
import type { Choice } from "../_ui/choice-field.client.tsx";
import type { BillWords } from "./bill-words.ts";

/** A lot goods may be handed back of: said by its day, what is free of it and where it lies. */
export type LotChoice = Choice & Readonly<{ materialId: string }>;

/** What the form of a bill is drawn from: plain text and numbers, so that it crosses to the browser. */
export type BillProps = Readonly<{
  facts: AisleFacts;
  /** How each store rounded the taxes of its last bill. */
  roundings: Readonly<Record<string, string>>;
  currencies: readonly Choice[];
  units: readonly Choice[];
  /** Places a delivery may be taxed in. */
  regions: readonly Choice[];
  /** Stock goods may be handed back of. */
  lots: readonly LotChoice[];
  words: BillWords;
  amountWords: AmountWords;
  locale: string;
}>;
