import { getLocale } from "next-intl/server";
import { AmountField } from "../_ui/amount-field.client.tsx";
import { amountWords } from "../_words/amount-words.ts";

type QuantityFieldProps = Readonly<{
  label: string;
  name?: string;
  hint?: string;
  start?: string | undefined;
  beside?: string;
}>;

/** A figure of a form, with what stands beside it: a unit, a currency. */
export async function QuantityField({ name = "quantity", ...rest }: QuantityFieldProps) {
  return (
    <AmountField name={name} locale={await getLocale()} words={await amountWords()} required {...rest} />
  );
}
