import { getLocale, getTranslations } from "next-intl/server";
import { decimal } from "../../../lib/decimal.ts";
import { smaller } from "../../../lib/show/free-lots.ts";
import { quantityText } from "../../../lib/show/money-text.ts";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { needChoices } from "../need-choices.ts";
import { QuantityField } from "../quantity-field.tsx";
import { WhenFields } from "../when-fields.tsx";
import { EventForm, TakenFrom } from "./event-form.tsx";
import type { LotContext } from "./lot-context.ts";

/** Using some of a lot, and setting some of it aside. Nothing when nothing is left. */
export async function TakeForms({ lot, more, needs, names, projectOf, places, day }: LotContext) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  if (lot.onHand.quantity.isZero()) return null;
  const held = lot.account.holdings.flatMap(({ requirementId, quantity }) =>
    requirementId === null ? [] : [{ requirementId, quantity }],
  );
  const open = await needChoices(needs, names);
  const others = open.filter((need) => !held.some((one) => one.requirementId === need.value));
  const firstOpen = needs.find((need) => need.isOpen);
  const { quantity: free } = lot.free;
  const lotId = lot.lot.id;
  const unit = units.of(lot.unit, "2");
  const heldChoices = held.map(({ requirementId, quantity }) => ({
    value: requirementId,
    label: t("heldLine", {
      project: projectOf.get(requirementId) ?? "–",
      quantity: quantityText(quantity, locale),
      unit: units.of(lot.unit, quantity.toFixed()),
    }),
  }));
  const drawnFor = [...heldChoices, ...others, { value: "", label: t("requirementNone") }];
  const received = !lot.onHand.quantity.equals(lot.onHand.onOrder);
  return (
    <>
      {received ? (
        <Part title={t("drawTitle")} note={t("drawNote")}>
          <EventForm lotId={lotId} kind="drawn" button={t("draw")} main>
            <QuantityField label={t("howMany")} start={(held[0]?.quantity ?? free).toFixed()} beside={unit} />
            <ChoiceField
              name="requirementId"
              label={t("requirement")}
              choices={drawnFor}
              start={drawnFor[0]?.value ?? ""}
            />
            <TakenFrom lying={more.lying} places={places} />
            <WhenFields day={day} />
          </EventForm>
        </Part>
      ) : null}
      {free.isZero() || open.length === 0 ? null : (
        <Part title={t("allocateTitle")} note={t("allocateNote")}>
          <EventForm lotId={lotId} kind="allocated" button={t("allocate")}>
            <QuantityField
              label={t("howMany")}
              start={firstOpen ? smaller(free, decimal(firstOpen.open.exact)) : free.toFixed()}
              beside={unit}
            />
            <ChoiceField
              name="requirementId"
              label={t("requirement")}
              choices={open}
              start={open[0]?.value ?? ""}
            />
            <WhenFields day={day} />
          </EventForm>
        </Part>
      )}
    </>
  );
}
