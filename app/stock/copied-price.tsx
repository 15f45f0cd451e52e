import { getLocale, getTranslations } from "next-intl/server";
import type { Observation } from "../../lib/prices/observation.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { quantityText, unitPriceText } from "../../lib/show/money-text.ts";
import { Notice } from "../_ui/notice.tsx";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";

/** The sighting a lot copies its price from, as it stood on the tag. */
export async function CopiedPrice({
  observation,
  names,
}: Readonly<{ observation: Observation; names: Names }>) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const { amount, per } = observation;
  if (amount === null) return null;
  return (
    <Notice>
      <p>
        {t("copied", {
          material: names.material(observation.materialId),
          store: names.store(observation.storeId),
          amount: unitPriceText(amount, locale),
          currency: amount.currency,
          quantity: quantityText(per.quantity, locale),
          unit: (await unitWords()).of(per.unit, per.quantity.toFixed()),
          tax: observation.taxIncluded ? "in" : "out",
          day: dayText(observation.seenOn, locale),
        })}
      </p>
    </Notice>
  );
}
