import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../../lib/calendar/local-date.ts";
import type { RequirementExposure } from "../../../../../lib/exposure/exposure-figures.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import { requirementRow } from "../../../../../lib/show/requirement-row.ts";
import { said } from "../../../../_ui/said.tsx";
import { unitWords } from "../../../../_words/unit-words.ts";

/** How a need stands: open and what that costs, or covered. */
export async function NeedAnswer({ line, day }: Readonly<{ line: RequirementExposure; day: LocalDate }>) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const row = requirementRow(line, day, locale);
  const values = {
    open: row.open,
    unit: (await unitWords()).of(row.unit, line.open.toFixed()),
    needed: row.needed,
    locked: row.lockedIn,
    day: dayText(row.neededBy, locale),
    b: said,
  };
  if (!row.isOpen) return t.rich("needCovered", values);
  return (
    <>
      {t.rich("needOpen", values)}{" "}
      {row.toFinish === null
        ? t("needUnpriced")
        : t.rich("needCosts", { amount: row.toFinish, currency: line.lockedCost.currency, b: said })}
    </>
  );
}
