import { getLocale, getTranslations } from "next-intl/server";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { transferForm } from "../../lot-act-actions.ts";
import { needChoices } from "../../need-choices.ts";
import { QuantityField } from "../../quantity-field.tsx";
import { WhenFields } from "../../when-fields.tsx";
import { EventForm } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

/** What is set aside for one project goes to another, at its own cost. Nothing where there is no other that needs it. */
export async function TransferForm({ lot, needs, names, projectOf, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const locale = await getLocale();
  const units = await unitWords();
  const held = lot.account.holdings.flatMap(({ requirementId, quantity }) =>
    requirementId === null
      ? []
      : [
          {
            value: requirementId,
            label: `${projectOf.get(requirementId) ?? "–"}: ${quantityText(quantity, locale)}`,
            quantity,
          },
        ],
  );
  const [first] = held;
  const to = await needChoices(
    needs.filter(({ requirementId }) => held.length > 1 || requirementId !== first?.value),
    names,
  );
  if (first === undefined || to.length === 0) return null;
  return (
    <More title={t("transfer.title")}>
      <p>{t("transfer.note")}</p>
      <EventForm lotId={lot.lot.id} action={transferForm} button={t("transfer.button")}>
        <ChoiceField name="held" label={t("transfer.from")} choices={held} start={first.value} />
        <ChoiceField
          name="toRequirementId"
          label={t("transfer.to")}
          choices={to}
          start={to.find(({ value }) => value !== first.value)?.value ?? ""}
        />
        <QuantityField
          label={t("transfer.many")}
          start={first.quantity.toFixed()}
          beside={units.of(lot.unit, "2")}
        />
        <WhenFields day={day} />
      </EventForm>
    </More>
  );
}
