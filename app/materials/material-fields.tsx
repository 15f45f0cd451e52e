import { getTranslations } from "next-intl/server";
import { CATEGORIES, type Category, type Material } from "../../lib/materials/material.ts";
import { type SizeField, sizeFields, unitsOfSize, usualPurchaseUnit } from "../../lib/show/size-fields.ts";
import { sizeTyped } from "../../lib/show/size-text.ts";
import { ChoiceField, PickField } from "../_ui/choice-field.client.tsx";
import { Field } from "../_ui/field.client.tsx";
import { RowFields, Rows } from "../_ui/rows.tsx";
import { UnitField } from "../_ui/unit-field.client.tsx";
import { unitChoices, unitWords } from "../_words/unit-words.ts";
import { IdentityFields } from "./identity-fields.tsx";

/** What a form can begin with. */
export type MaterialStart = Omit<Material, "id" | "archivedOn">;

export type MaterialFieldsProps = Readonly<{
  /** What the fields begin with: a material, or an entry of the catalogue; null: nothing. */
  material: MaterialStart | null;
  category: Category;
  /** The workspace's own recheck days. */
  recheckDays: number;
  /** Names of the taxes known, to choose from. */
  taxes: readonly string[];
}>;

/** The sizes that have something in them stand in sight, whatever the category. */
function inSight(
  category: Category,
  material: MaterialStart | null,
): { first: SizeField[]; rest: SizeField[] } {
  const { first, rest } = sizeFields(category);
  const has = ({ name }: SizeField) => material?.dimensions[name] !== undefined;
  return { first: [...first, ...rest.filter(has)], rest: rest.filter((size) => !has(size)) };
}

/** The fields of a material: what it is and how it is bought, then the sizes its category usually needs, then the rest. */
export async function MaterialFields({ material, category, recheckDays, taxes }: MaterialFieldsProps) {
  const t = await getTranslations("materials.form");
  const c = await getTranslations("categories");
  const ui = await getTranslations("ui");
  const units = await unitWords();
  const { first, rest } = inSight(category, material);
  const kept = material?.sources.shelfLifeDays;
  const sizeField = ({ name, unit }: SizeField) => {
    const known = material?.dimensions[name];
    const source = material?.sources[name];
    return (
      <UnitField
        key={name}
        name={`dimensions.${name}`}
        label={t(`size.${name}`)}
        unitLabel={ui("unitOf", { field: t(`size.${name}`) })}
        hint={source === undefined ? undefined : t("source", { source })}
        start={known === undefined ? "" : sizeTyped(known)}
        startUnit={known?.unit ?? unit}
        units={unitsOfSize(name).map((one) => ({ value: one, label: units.short(one) }))}
      />
    );
  };
  return (
    <>
      <Field name="name" label={t("name")} hint={t("nameHint")} start={material?.name} required />
      <ChoiceField
        name="category"
        label={t("category")}
        start={category}
        choices={CATEGORIES.map((one) => ({ value: one, label: c(one) }))}
      />
      <ChoiceField
        name="purchaseUnit"
        label={t("purchaseUnit")}
        hint={t("purchaseUnitHint")}
        start={material?.purchaseUnit ?? usualPurchaseUnit(category)}
        choices={await unitChoices()}
      />
      <Rows title={t("sizes")} hint={t("sizesHint")}>
        <RowFields label={t("sizes")}>{first.map(sizeField)}</RowFields>
        <details>
          <summary>{t("moreSizes")}</summary>
          <RowFields label={t("moreSizes")}>{rest.map(sizeField)}</RowFields>
        </details>
      </Rows>
      <IdentityFields category={category} identity={material?.identity ?? {}} />
      <Field
        name="shelfLifeDays"
        label={t("shelfLifeDays")}
        hint={kept === undefined ? t("shelfLifeHint") : t("source", { source: kept })}
        start={material?.shelfLifeDays?.toString() ?? ""}
        inputMode="numeric"
      />
      <Field
        name="recheckDays"
        label={t("recheckDays")}
        hint={t("recheckDaysHint", { days: recheckDays })}
        start={material?.recheckDays?.toString() ?? ""}
        inputMode="numeric"
      />
      <PickField
        name="exemptFrom"
        label={t("exemptFrom")}
        hint={t("exemptFromHint")}
        many
        starts={material?.exemptFrom ?? []}
        choices={taxes.map((tax) => ({ value: tax, label: tax }))}
      />
      <Field name="note" label={t("note")} rows={3} start={material?.note ?? ""} />
    </>
  );
}
