import { getTranslations } from "next-intl/server";
import { decimal } from "../../lib/decimal.ts";
import { PURCHASE_UNITS, type UnitCode } from "../../lib/measure/units.ts";
import type { Choice } from "../_ui/choice-field.client.tsx";

export type UnitWords = Readonly<{
  /** "sheet", as in "per sheet". */
  one: (unit: UnitCode) => string;
  /** "ft", where room is short. */
  short: (unit: UnitCode) => string;
  /** The form that goes with a quantity in decimal text: "1 sheet", "2.5 sheets". */
  of: (unit: UnitCode, quantity: string) => string;
}>;

/** The names of units in the language of the request. */
export async function unitWords(): Promise<UnitWords> {
  const t = await getTranslations("units");
  return {
    one: (unit) => t(`${unit}.one`),
    short: (unit) => t(`${unit}.short`),
    of: (unit, quantity) => t(decimal(quantity).equals(1) ? `${unit}.one` : `${unit}.many`),
  };
}

/** Purchase units as choices of a field. */
export async function unitChoices(units: readonly UnitCode[] = PURCHASE_UNITS): Promise<Choice[]> {
  const words = await unitWords();
  return units.map((unit) => ({ value: unit, label: words.one(unit) }));
}
