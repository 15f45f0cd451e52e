import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../lib/show/day-text.ts";
import type { LotDays } from "../../lib/show/lot-days.ts";
import { Below } from "../_ui/money-text.tsx";

/** The days of a lot that press, each in a smaller line: near, or past. all: those far ahead too. */
export async function DaysBelow({ days, all = false }: Readonly<{ days: LotDays; all?: boolean }>) {
  const t = await getTranslations("lotLife");
  const locale = await getLocale();
  return (["expected", "keeps", "returnable", "adjustable"] as const).map((which) => {
    const one = days[which];
    if (one === null) return null;
    // A return day that is over presses nobody; one that keeps no longer, or has not come, does.
    const over = one.left < 0;
    if (!all && (!one.near || (over && which !== "keeps" && which !== "expected"))) return null;
    return (
      <Below key={which}>
        {t(`days.${which}`, { day: dayText(one.on, locale), left: one.left, over: over ? "yes" : "no" })}
      </Below>
    );
  });
}
