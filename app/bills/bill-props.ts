import type { AisleFacts } from "../../lib/show/aisle-facts.ts";
import type { AmountWords } from "../_ui/amount-field.client.tsx";
import type { Choice } from "../_ui/choice-field.client.tsx";
import type { BillWords } from "./bill-words.ts";

/** What the form of a bill is drawn from: plain text and numbers, so that it crosses to the browser. */
export type BillProps = Readonly<{
  facts: AisleFacts;
  /** How each store rounded the taxes of its last bill. */
  roundings: Readonly<Record<string, string>>;
  currencies: readonly Choice[];
  units: readonly Choice[];
  words: BillWords;
  amountWords: AmountWords;
  locale: string;
}>;
