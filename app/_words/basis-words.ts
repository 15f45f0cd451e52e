import { getTranslations } from "next-intl/server";
import type { ComparisonBasis } from "../../lib/show/comparison-basis.ts";
import { unitWords } from "./unit-words.ts";

/** The one sentence that says what figures beside each other are for: how much, which tax, currency, day and charges. */
export async function basisWords(): Promise<(basis: ComparisonBasis) => string> {
  const t = await getTranslations("comparison");
  const units = await unitWords();
  return (basis) => {
    const { of, unit, exact } = basis;
    return t("line", { ...basis, unit: of === "one" ? units.one(unit) : units.of(unit, exact) });
  };
}
