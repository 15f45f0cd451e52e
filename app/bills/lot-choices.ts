import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { Scope } from "../../lib/data/client.ts";
import { lotsOf } from "../../lib/data/lots.ts";
import { liveEventsOfLots } from "../../lib/data/stock-events.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { freeLots } from "../../lib/show/free-lots.ts";
import type { LotChoice } from "./bill-props.ts";

/** What is in stock and free, as choices of what was handed back; what was bought first comes first. */
export async function lotChoices(scope: Scope, day: LocalDate): Promise<LotChoice[]> {
  const t = await getTranslations("bills");
  const locale = await getLocale();
  const lots = await lotsOf(scope);
  const events = await liveEventsOfLots(
    scope,
    lots.map(({ id }) => id),
  );
  return freeLots(lots, events, day, locale).map(({ lotId, materialId, free, orderedOn }) => ({
    value: lotId,
    materialId,
    label: t("lotChoice", { day: dayText(orderedOn, locale), free }),
  }));
}
