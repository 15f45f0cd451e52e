import { getLocale, getTranslations } from "next-intl/server";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { currencyChoices } from "../../../_words/currency-choices.ts";
import { unitWords } from "../../../_words/unit-words.ts";
import { QuantityField } from "../../quantity-field.tsx";
import { WhenFields } from "../../when-fields.tsx";
import { EventForm, TakenFrom } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

/** Selling some of what is free: how many, and what came in for all of them. Who bought it is nobody's business. */
export async function SellForm({ lot, more, places, valuation, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const units = await unitWords();
  const free = lot.free.quantity.minus(lot.free.onOrder);
  if (!free.greaterThan(0)) return null;
  const home = valuation.homeCurrency;
  return (
    <More title={t("sell.title")}>
      <EventForm lotId={lot.lot.id} kind="sold" button={t("sell.button")}>
        <QuantityField label={t("sell.many")} start={free.toFixed()} beside={units.of(lot.unit, "2")} />
        <QuantityField name="amount" label={t("proceeds")} hint={t("proceedsHint")} />
        <ChoiceField
          name="currency"
          label={t("proceedsCurrency")}
          choices={currencyChoices(await getLocale(), [home, lot.lot.paid.currency])}
          start={home}
        />
        <TakenFrom lying={more.lying} places={places} />
        <WhenFields day={day} />
      </EventForm>
    </More>
  );
}
