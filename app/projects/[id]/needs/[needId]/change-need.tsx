import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../../../../lib/materials/material.ts";
import type { Requirement, RequirementRevision } from "../../../../../lib/projects/project.ts";
import { fingerprint } from "../../../../_forms/fingerprint.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { reviseNeedForm } from "../../../need-actions.ts";
import { NeedFields } from "../../../need-fields.client.tsx";
import { needMaterials, needWords } from "../../../need-words.ts";

type ChangeNeedProps = Readonly<{
  need: Requirement;
  revision: RequirementRevision;
  material: Material;
  materials: readonly Material[];
  currency: string;
}>;

/** The form of a revision, with what holds now in it. */
export async function ChangeNeed({ need, revision, material, materials, currency }: ChangeNeedProps) {
  const t = await getTranslations("projects");
  const [fixed = null] = await needMaterials([material]);
  return (
    <Form action={reviseNeedForm} seen={fingerprint(need)} faultsTitle={t("faultsTitle")}>
      <input type="hidden" name="requirementId" value={need.id} />
      <NeedFields
        materials={await needMaterials(materials)}
        fixed={fixed}
        start={{
          quantity: revision.quantity.toFixed(),
          unit: revision.unit,
          wastePercent: revision.wastePercent.toFixed(),
          neededBy: revision.neededBy,
          budgetUnitPrice: revision.budgetUnitPrice?.amount.toFixed() ?? "",
          acceptsUsed: revision.acceptsUsed,
          alternatives: need.alternatives.map(({ materialId, factor }) => ({
            materialId,
            factor: factor.toFixed(),
          })),
        }}
        words={await needWords(currency)}
        locale={await getLocale()}
        chosen={material.id}
      />
      <Button pending={t("saving")}>{t("save")}</Button>
    </Form>
  );
}
