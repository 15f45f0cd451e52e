import { getTranslations } from "next-intl/server";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { QuantityField } from "../../quantity-field.tsx";
import { WhenFields } from "../../when-fields.tsx";
import { EventForm, TakenFrom } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

const CAUSES = ["damaged", "warped", "wet", "stolen", "expired", "other"] as const;

/** Writing off what is ruined or gone, with what happened to it. */
export async function WriteOffForm({ lot, more, places, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const units = await unitWords();
  const free = lot.free.quantity.minus(lot.free.onOrder);
  if (!free.greaterThan(0)) return null;
  return (
    <More title={t("writeOff.title")}>
      <p>{t("writeOff.note")}</p>
      <EventForm lotId={lot.lot.id} kind="written-off" button={t("writeOff.button")}>
        <QuantityField label={t("writeOff.many")} start="" beside={units.of(lot.unit, "2")} />
        <ChoiceField
          name="cause"
          label={t("writeOff.cause")}
          choices={CAUSES.map((cause) => {
            const words = t(`writeOff.causes.${cause}`);
            return { value: words, label: words };
          })}
          start={t("writeOff.causes.damaged")}
        />
        <TakenFrom lying={more.lying} places={places} />
        <WhenFields day={day} />
      </EventForm>
    </More>
  );
}
