import { getTranslations } from "next-intl/server";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField } from "../../_ui/field.client.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { receiveForm } from "../part-actions.ts";
import { QuantityField } from "../quantity-field.tsx";
import { EventForm } from "./event-form.tsx";
import type { LotContext } from "./lot-context.ts";

/** What of an order has come in: all that is still to come, or a part. Nothing where nothing is awaited. */
export async function ReceiveForm({ lot, places, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const units = await unitWords();
  const awaited = lot.onHand.onOrder;
  if (awaited.isZero()) return null;
  return (
    <Part title={t("receive.title")} note={t("receive.note")}>
      <EventForm lotId={lot.lot.id} action={receiveForm} button={t("receive.button")}>
        <QuantityField label={t("receive.many")} start={awaited.toFixed()} beside={units.of(lot.unit, "2")} />
        <DayField name="on" label={t("receive.on")} start={day} />
        <ChoiceField
          name="placeId"
          label={t("receive.to")}
          choices={[{ value: "", label: lot.lot.storedAt ?? t("notPutAway") }, ...places.live]}
        />
      </EventForm>
    </Part>
  );
}
