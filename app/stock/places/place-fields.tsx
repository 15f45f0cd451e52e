import { getLocale, getTranslations } from "next-intl/server";
import type { Quantity, UnitCode } from "../../../lib/measure/units.ts";
import type { Place } from "../../../lib/stock/place.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { Field } from "../../_ui/field.client.tsx";
import { Rows } from "../../_ui/rows.tsx";
import { UnitField } from "../../_ui/unit-field.client.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { unitWords } from "../../_words/unit-words.ts";

const UNITS = {
  area: ["square-foot", "square-metre"],
  volume: ["cubic-foot", "cubic-yard", "cubic-metre"],
  weight: ["pound", "kilogram"],
} as const satisfies Readonly<Record<string, readonly [UnitCode, ...UnitCode[]]>>;

function said(flag: boolean | null | undefined): string {
  if (flag === null || flag === undefined) return "";
  return flag ? "yes" : "no";
}

/** The fields of a place. place null: a new one. */
export async function PlaceFields({ place }: Readonly<{ place: Place | null }>) {
  const t = await getTranslations("places");
  const s = await getTranslations("settings");
  const units = await unitWords();
  const limit = (name: keyof typeof UNITS, start: Quantity | null) => (
    <UnitField
      name={name}
      label={t(`limits.${name}`)}
      unitLabel={t("unitOf", { limit: t(`limits.${name}`) })}
      hint={t(`limitHints.${name}`)}
      start={start?.value.toFixed()}
      startUnit={start?.unit ?? UNITS[name][0]}
      units={UNITS[name].map((unit) => ({ value: unit, label: units.of(unit, "2") }))}
    />
  );
  const flags = [
    { value: "", label: t("notSaid") },
    { value: "yes", label: s("yes") },
    { value: "no", label: s("no") },
  ];
  return (
    <>
      <Field name="name" label={t("name")} hint={t("nameHint")} start={place?.name} required />
      <Rows title={t("limitsTitle")} hint={t("limitsHint")}>
        {limit("area", place?.area ?? null)}
        {limit("volume", place?.volume ?? null)}
        {limit("weight", place?.weight ?? null)}
        <AmountField
          name="count"
          label={t("limits.count")}
          hint={t("limitHints.count")}
          start={place?.count?.toFixed()}
          locale={await getLocale()}
          words={await amountWords()}
        />
      </Rows>
      <ChoiceField name="covered" label={t("covered")} choices={flags} start={said(place?.covered)} />
      <ChoiceField
        name="ventilated"
        label={t("ventilated")}
        choices={flags}
        start={said(place?.ventilated)}
      />
      <Field name="note" label={t("note")} start={place?.note ?? ""} rows={3} />
    </>
  );
}
