import { getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import type { LeftoverText } from "../../../../lib/show/left-over-text.ts";
import type { NeedText } from "../../../../lib/show/needs-of.ts";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { ChoiceField } from "../../../_ui/choice-field.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import type { Names } from "../../../_workspace/names-of.ts";
import { transferForm } from "../../../stock/lot-act-actions.ts";
import { needChoices } from "../../../stock/need-choices.ts";
import { QuantityField } from "../../../stock/quantity-field.tsx";
import { WhenFields } from "../../../stock/when-fields.tsx";

type MoveOnProps = Readonly<{
  projectId: string;
  over: readonly LeftoverText[];
  needs: readonly NeedText[];
  names: Names;
  day: LocalDate;
}>;

/** What is set aside here goes to another project, at its own cost. Nothing where no other project needs any of it. */
export async function MoveOn({ projectId, over, needs, names, day }: MoveOnProps) {
  const t = await getTranslations("lotLife");
  const ui = await getTranslations("ui");
  const units = await unitWords();
  const elsewhere = needs.filter(
    (need) =>
      need.projectId !== projectId && over.some(({ materialId }) => need.materialIds.includes(materialId)),
  );
  const wanted = over.filter(({ materialId }) =>
    elsewhere.some(({ materialIds }) => materialIds.includes(materialId)),
  );
  const [first] = wanted;
  if (first === undefined) return null;
  const to = (await needChoices(elsewhere, names)).map((choice) => ({
    ...choice,
    group: names.material(choice.materialIds[0] ?? ""),
  }));
  return (
    <Part title={t("transfer.title")} note={t("transfer.note")}>
      <Form action={transferForm} id={newId()} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="projectId" value={projectId} />
        <ChoiceField
          name="held"
          label={t("transfer.what")}
          choices={wanted.map((one) => ({
            value: `${one.requirementId} ${one.lotId}`,
            label: `${names.material(one.materialId)}: ${one.quantity.text} ${units.of(one.unit, one.quantity.exact)}`,
          }))}
          start={`${first.requirementId} ${first.lotId}`}
        />
        <ChoiceField
          name="toRequirementId"
          label={t("transfer.to")}
          choices={to}
          start={to[0]?.value ?? ""}
        />
        <QuantityField label={t("transfer.many")} start={first.quantity.exact} />
        <WhenFields day={day} />
        <Button kind="plain" pending={ui("saving")}>
          {t("transfer.button")}
        </Button>
      </Form>
    </Part>
  );
}
