import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../../../lib/show/day-text.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { Field } from "../../../_ui/field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { unusedForm } from "../../lot-act-actions.ts";
import { QuantityField } from "../../quantity-field.tsx";
import { EventForm } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

/** "5 of the 31 came back unused": the draw is made smaller, at the same cost and on the same day. */
export async function UnusedForm({ lot, events, projectOf, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  const draws = events.filter(({ kind, on }) => kind === "drawn" && on <= day).reverse();
  const choices = draws.map(({ id, quantity, on, requirementId }) => ({
    value: id,
    label: t("unused.draw", {
      quantity: quantityText(quantity, locale),
      unit: units.of(lot.unit, quantity.toFixed()),
      day: dayText(on, locale),
      project: requirementId === null ? stock("requirementNone") : (projectOf.get(requirementId) ?? "–"),
    }),
  }));
  const [first] = choices;
  if (first === undefined) return null;
  return (
    <More title={t("unused.title")}>
      <p>{t("unused.note")}</p>
      <EventForm lotId={lot.lot.id} action={unusedForm} button={t("unused.button")}>
        <ChoiceField name="drawId" label={t("unused.of")} choices={choices} start={first.value} />
        <QuantityField label={t("unused.many")} start="" beside={units.of(lot.unit, "2")} />
        <Field name="reason" label={stock("reason")} />
      </EventForm>
    </More>
  );
}
