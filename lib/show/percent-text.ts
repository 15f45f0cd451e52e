import type { Decimal } from "../decimal.ts";
import { figureText } from "./money-text.ts";

export type PercentTextOptions = Readonly<{ signed?: boolean; places?: number; least?: number }>;

/**
 * A percentage for reading, e.g. "9.975%" or "+4.2%". Units: percent, not a share. Rounds: half up to `places`
 * (3 when left out), with no fewer than `least` (0 when left out). signed: "+" before a rise.
 */
export function percentText(percent: Decimal, locale: string, options: PercentTextOptions = {}): string {
  const figures = figureText(percent, locale, options.least ?? 0, options.places ?? 3, options.signed);
  const parts = new Intl.NumberFormat(locale, { style: "percent" }).formatToParts(1);
  return parts.map((part) => (part.type === "integer" ? figures : part.value)).join("");
}
