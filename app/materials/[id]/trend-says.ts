import { getTranslations } from "next-intl/server";
import type { PurchaseUnit } from "../../../lib/measure/units.ts";
import type { TrendLot } from "../../../lib/show/trend-lots.ts";
import type { TrendPoint } from "../../../lib/show/trend-points.ts";
import { unitWords } from "../../_words/unit-words.ts";

const ORIGIN = {
  bought: "bought",
  "special-order": "ordered",
  salvaged: "salvaged",
  "left-over": "leftOver",
} as const;

/** Points and lots of a trend in words, for the chart and its key. unit: what lots are counted in. */
export async function trendSays(unit: PurchaseUnit) {
  const t = await getTranslations("materials.page");
  const terms = await getTranslations("terms");
  const units = await unitWords();
  const lotInKey = (lot: TrendLot) =>
    t("lotSays", {
      origin: ORIGIN[lot.origin],
      quantity: lot.quantity,
      unit: units.of(unit, lot.quantityExact),
      price: lot.price,
      day: lot.day,
      projects: lot.projects.join(", "),
      named: lot.projects.length > 0 ? "yes" : "no",
    });
  return {
    point: (point: TrendPoint) =>
      t("pointSays", {
        store: point.storeName,
        price: point.price,
        terms: `${terms(point.terms)}${point.beforeImportCharges ? `, ${t("beforeImport")}` : ""}`,
      }),
    lotInKey,
    lot: (lot: TrendLot) => `${lot.letter}: ${lotInKey(lot)}`,
  };
}
