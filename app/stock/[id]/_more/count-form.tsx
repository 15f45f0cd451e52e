import { getTranslations } from "next-intl/server";
import { More } from "../../../_ui/more.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { countLotForm } from "../../lot-act-actions.ts";
import { QuantityField } from "../../quantity-field.tsx";
import { WhenFields } from "../../when-fields.tsx";
import { EventForm } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

/** Counting a lot wherever it lies: the difference is booked. */
export async function CountForm({ lot, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const units = await unitWords();
  return (
    <More title={t("countLot.title")}>
      <p>{t("countLot.note")}</p>
      <EventForm lotId={lot.lot.id} action={countLotForm} button={t("countLot.button")}>
        <QuantityField label={t("countLot.many")} start="" beside={units.of(lot.unit, "2")} />
        <WhenFields day={day} />
      </EventForm>
    </More>
  );
}
