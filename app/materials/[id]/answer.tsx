import { getLocale, getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { goingPriceOn } from "../../../lib/prices/going-price.ts";
import type { OffersOfDay } from "../../../lib/prices/offers.ts";
import { materialRow } from "../../../lib/show/material-rows.ts";
import { unitPriceText } from "../../../lib/show/money-text.ts";
import { bestForFewest, bestForOne, offerRow } from "../../../lib/show/offer-row.ts";
import { unitWords } from "../../_words/unit-words.ts";

type AnswerProps = Readonly<{
  day: LocalDate;
  material: Material;
  facts: ExposureFacts;
  offers: OffersOfDay;
}>;

const strong = (chunks: ReactNode) => <strong>{chunks}</strong>;

/** What one costs on the day: the best offer, else the last price known; and the going price beside it. */
export async function Answer({ day, material, facts, offers }: AnswerProps) {
  const t = await getTranslations("materials.page");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const units = await unitWords();
  const unit = units.one(material.purchaseUnit);
  const { valuation, observations } = facts;
  const currency = valuation.homeCurrency;
  const forOne = bestForOne(offers.offers);
  const found = forOne ?? bestForFewest(offers.offers);
  const going = goingPriceOn(day, observations, material, valuation);
  const { last } = materialRow(day, material, observations, valuation, locale);
  const age = (days: number) => ui("age", { days });
  const shared = { currency, unit, b: strong };
  if (found === null && last === null) return t("noPrice");
  const best = found === null ? null : offerRow(found, valuation, locale);
  return (
    <>
      {best === null
        ? t.rich("lastWas", {
            ...shared,
            price: last?.price ?? "",
            store: last?.storeName ?? "",
            age: age(last?.ageDays ?? 0),
          })
        : t.rich(forOne === null ? "bestFrom" : "best", {
            ...shared,
            quantity: `${best.minimum?.text ?? ""} ${units.of(best.unit, best.minimum?.exact ?? "1")}`,
            price: best.price,
            store: best.storeName,
            age: age(best.ageDays),
            stale: best.stale ? "yes" : "no",
          })}{" "}
      {going.known
        ? t(going.kind === "fresh" ? "going" : "goingOlder", {
            price: unitPriceText(going.price, locale),
            stores: going.stores,
          })
        : t("noGoing")}
    </>
  );
}
