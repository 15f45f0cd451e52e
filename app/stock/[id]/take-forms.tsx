import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { decimal } from "../../../lib/decimal.ts";
import { smaller } from "../../../lib/show/free-lots.ts";
import type { LotOnDay } from "../../../lib/show/lot-text.ts";
import { quantityText } from "../../../lib/show/money-text.ts";
import type { NeedText } from "../../../lib/show/needs-of.ts";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";
import { needChoices } from "../need-choices.ts";
import { EventForm } from "./event-form.tsx";

type TakeFormsProps = Readonly<{
  lot: LotOnDay;
  needs: readonly NeedText[];
  names: Names;
  projectOf: ReadonlyMap<string, string>;
  day: LocalDate;
}>;

/** Using some of a lot, and setting some of it aside: what there is to do with it. Nothing when nothing is left. */
export async function TakeForms({ lot, needs, names, projectOf, day }: TakeFormsProps) {
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
  const shared = { lotId: lot.lot.id, day, unit: units.of(lot.unit, "2") };
  return (
    <>
      <Part title={t("drawTitle")} note={t("drawNote")}>
        <EventForm
          kind="drawn"
          button={t("draw")}
          main
          quantity={(held[0]?.quantity ?? free).toFixed()}
          choices={[
            ...held.map(({ requirementId, quantity }) => ({
              value: requirementId,
              label: t("heldLine", {
                project: projectOf.get(requirementId) ?? "–",
                quantity: quantityText(quantity, locale),
                unit: units.of(lot.unit, quantity.toFixed()),
              }),
            })),
            ...others,
            { value: "", label: t("requirementNone") },
          ]}
          {...shared}
        />
      </Part>
      {free.isZero() || open.length === 0 ? null : (
        <Part title={t("allocateTitle")} note={t("allocateNote")}>
          <EventForm
            kind="allocated"
            button={t("allocate")}
            quantity={firstOpen ? smaller(free, decimal(firstOpen.open.exact)) : free.toFixed()}
            choices={open}
            {...shared}
          />
        </Part>
      )}
    </>
  );
}
