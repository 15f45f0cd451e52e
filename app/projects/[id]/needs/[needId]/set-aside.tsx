import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../../lib/calendar/local-date.ts";
import { lotsOf } from "../../../../../lib/data/lots.ts";
import { liveEventsOfLots } from "../../../../../lib/data/stock-events.ts";
import { type Decimal, decimal, ONE } from "../../../../../lib/decimal.ts";
import type { Material } from "../../../../../lib/materials/material.ts";
import type { Requirement } from "../../../../../lib/projects/project.ts";
import { standInFactor } from "../../../../../lib/projects/stands-in.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import { freeLots, smaller } from "../../../../../lib/show/free-lots.ts";
import { figureText } from "../../../../../lib/show/money-text.ts";
import { mayServe } from "../../../../../lib/stock/salvage.ts";
import { newId } from "../../../../_forms/new-id.ts";
import { AmountField } from "../../../../_ui/amount-field.client.tsx";
import { Button } from "../../../../_ui/button.client.tsx";
import { ChoiceField } from "../../../../_ui/choice-field.client.tsx";
import { DayField } from "../../../../_ui/field.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { Part } from "../../../../_ui/page-head.tsx";
import { amountWords } from "../../../../_words/amount-words.ts";
import { unitWords } from "../../../../_words/unit-words.ts";
import { scopeSeen } from "../../../../_workspace/workspace-seen.ts";
import { setAsideForm } from "../../../need-actions.ts";

type SetAsideProps = Readonly<{
  need: Requirement;
  open: Decimal;
  materials: ReadonlyMap<string, Material>;
  day: LocalDate;
}>;

/** Free stock of the material, or of an accepted other one, set aside for this need. Nothing when there is none. */
export async function SetAside({ need, open, materials, day }: SetAsideProps) {
  const t = await getTranslations("projects");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  const scope = await scopeSeen();
  const accepted = [need.materialId, ...need.alternatives.map(({ materialId }) => materialId)];
  const lots = (await Promise.all(accepted.map((materialId) => lotsOf(scope, { materialId })))).flat();
  const events = await liveEventsOfLots(
    scope,
    lots.map(({ id }) => id),
  );
  const salvage = await getTranslations("salvage");
  const serving = lots.filter((lot) => mayServe(lot, need, day));
  const free = freeLots(serving, events, day, locale);
  const left = freeLots(lots, events, day, locale).length > free.length;
  const factorOf = (materialId: string) => standInFactor(need, materialId) ?? ONE;
  const [first] = free;
  if (first === undefined)
    return left ? (
      <Part title={t("setAsideTitle")} note={salvage("usedOnly")}>
        {null}
      </Part>
    ) : null;
  return (
    <Part
      title={t("setAsideTitle")}
      note={left ? `${t("setAsideNote")} ${salvage("usedOnly")}` : t("setAsideNote")}
    >
      <Form action={setAsideForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="requirementId" value={need.id} />
        <input type="hidden" name="projectId" value={need.projectId} />
        <ChoiceField
          name="lotId"
          label={t("lot")}
          start={first.lotId}
          choices={free.map((lot) => {
            const material = materials.get(lot.materialId);
            return {
              value: lot.lotId,
              label: t("freeLot", {
                free: lot.free,
                unit: material ? units.of(material.purchaseUnit, lot.freeExact) : "",
                material: lot.materialId === need.materialId ? "own" : (material?.name ?? ""),
                factor: figureText(factorOf(lot.materialId), locale, 1, 6),
                day: dayText(lot.orderedOn, locale),
                place: lot.storedAt ?? "none",
              }),
            };
          })}
        />
        <AmountField
          name="quantity"
          label={stock("howMany")}
          start={smaller(decimal(first.freeExact), open.times(factorOf(first.materialId)))}
          locale={locale}
          words={await amountWords()}
        />
        <DayField name="on" label={stock("on")} start={day} />
        <Button kind="plain" pending={t("saving")}>
          {stock("allocate")}
        </Button>
      </Form>
    </Part>
  );
}
