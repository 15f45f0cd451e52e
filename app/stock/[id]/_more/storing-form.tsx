import { getTranslations } from "next-intl/server";
import { More } from "../../../_ui/more.tsx";
import { QuantityField } from "../../quantity-field.tsx";
import { WhenFields } from "../../when-fields.tsx";
import { EventForm } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

/** What storing this lot cost: part of its carrying cost. Of a whole place it is shared on the place's own page. */
export async function StoringForm({ lot, valuation, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const currency = valuation.homeCurrency;
  return (
    <More title={t("storingTitle")}>
      <p>{t("storingNote")}</p>
      <EventForm lotId={lot.lot.id} kind="stored" button={t("storingButton")}>
        <input type="hidden" name="currency" value={currency} />
        <QuantityField name="amount" label={t("storing")} beside={currency} />
        <WhenFields day={day} />
      </EventForm>
    </More>
  );
}
