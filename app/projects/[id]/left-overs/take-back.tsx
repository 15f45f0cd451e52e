import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import { dayText } from "../../../../lib/show/day-text.ts";
import type { LeftoverText, ProjectDrawText } from "../../../../lib/show/left-over-text.ts";
import { newId } from "../../../_forms/new-id.ts";
import { AmountField } from "../../../_ui/amount-field.client.tsx";
import { Button } from "../../../_ui/button.client.tsx";
import { DayField, Field } from "../../../_ui/field.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { RowFields, Rows } from "../../../_ui/rows.tsx";
import { Table } from "../../../_ui/table.tsx";
import { amountWords } from "../../../_words/amount-words.ts";
import { unitWords } from "../../../_words/unit-words.ts";
import type { Names } from "../../../_workspace/names-of.ts";
import { leftOversForm } from "./actions.ts";

type TakeBackProps = Readonly<{
  projectId: string;
  over: readonly LeftoverText[];
  draws: readonly ProjectDrawText[];
  names: Names;
  day: LocalDate;
}>;

/** What goes back to stock, before it does: what is set aside and not used, all of it; of what was used, what came back. */
export async function TakeBack({ projectId, over, draws, names, day }: TakeBackProps) {
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const units = await unitWords();
  const words = await amountWords();
  return (
    <Part title={t("over.backTitle")} note={t("over.backNote")}>
      {over.length === 0 ? (
        <p>{t("over.nothingAside")}</p>
      ) : (
        <Table
          caption={t("over.aside")}
          captionHidden
          cards
          least="24rem"
          columns={[
            { key: "material", label: stock("material") },
            { key: "quantity", label: t("over.aside"), figures: true },
            { key: "bought", label: stock("acquired"), figures: true },
          ]}
          rows={over.map((one) => ({
            key: `${one.lotId} ${one.requirementId}`,
            cells: [
              <Link key="lot" href={`/stock/${one.lotId}`}>
                {names.material(one.materialId)}
              </Link>,
              `${one.quantity.text} ${units.of(one.unit, one.quantity.exact)}`,
              dayText(one.orderedOn, locale),
            ],
          }))}
        />
      )}
      <Form action={leftOversForm} id={newId()} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="projectId" value={projectId} />
        {draws.length === 0 ? null : (
          <Rows title={t("over.cameBack")} hint={t("over.cameBackHint")}>
            {draws.map((draw, row) => {
              const label = t("over.draw", {
                material: names.material(draw.materialId),
                quantity: draw.quantity.text,
                unit: units.of(draw.unit, draw.quantity.exact),
                day: dayText(draw.on, locale),
              });
              return (
                <RowFields key={draw.eventId} label={label}>
                  <input type="hidden" name={`unused.${row}.eventId`} value={draw.eventId} />
                  <input type="hidden" name={`unused.${row}.name`} value={names.material(draw.materialId)} />
                  <AmountField
                    name={`unused.${row}.quantity`}
                    label={label}
                    beside={units.of(draw.unit, "2")}
                    locale={locale}
                    words={words}
                  />
                </RowFields>
              );
            })}
          </Rows>
        )}
        <DayField name="on" label={stock("on")} start={day} />
        <Field name="reason" label={stock("reason")} />
        <Button pending={ui("saving")}>{t("over.button")}</Button>
      </Form>
    </Part>
  );
}
