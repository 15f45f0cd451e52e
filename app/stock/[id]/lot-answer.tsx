import { getTranslations } from "next-intl/server";
import type { LotText } from "../../../lib/show/lot-text.ts";
import { said } from "../../_ui/said.tsx";
import { unitWords } from "../../_words/unit-words.ts";

/** How much of a lot is there, for whom, and at which cost. */
export async function LotAnswer({ lot, currency }: Readonly<{ lot: LotText; currency: string }>) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  if (lot.onHand === null) return t("lotGone");
  // Nothing of it is here yet: what is on order is price-safe, not delivery-safe.
  const awaited = lot.onOrder !== null && lot.onOrder === lot.onHand.text;
  const words = {
    quantity: lot.onHand.text,
    unit: (await unitWords()).of(lot.unit, lot.onHand.exact),
    aside: lot.setAside?.text ?? "0",
    free: lot.free?.text ?? "0",
    b: said,
  };
  return (
    <>
      {awaited ? life.rich("answerOrdered", words) : t.rich("lotAnswer", words)}{" "}
      {lot.onOrder === null || awaited ? null : <>{life("answerAwaited", { quantity: lot.onOrder })} </>}
      {lot.cost === null
        ? t(`unknownCost.${lot.noCost ?? "other"}`)
        : t("lotCosts", { cost: lot.cost, currency, each: lot.each ?? "" })}
    </>
  );
}
