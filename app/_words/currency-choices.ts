import { type CurrencyCode, MINOR_UNITS } from "../../lib/money/currencies.ts";
import type { Choice } from "../_ui/choice-field.client.tsx";

/** Every currency with its name in a language, those of first use on top: "CAD, Canadian Dollar". */
export function currencyChoices(locale: string, first: readonly CurrencyCode[]): Choice[] {
  const names = new Intl.DisplayNames(locale, { type: "currency" });
  const codes = [...first, ...(Object.keys(MINOR_UNITS) as CurrencyCode[])];
  return [...new Set(codes)].map((code) => {
    const name = names.of(code) ?? code;
    return { value: code, label: name === code ? code : `${code}, ${name}` };
  });
}
