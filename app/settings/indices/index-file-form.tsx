import { getTranslations } from "next-intl/server";
import type { ReferenceIndex } from "../../../lib/indices/index-value.ts";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { FileForm } from "../files/file-form.client.tsx";
import { fileFormWords } from "../files/file-words.ts";
import { takeIndexForm } from "./file-action.ts";

/** A file of index values, for an index there is or a new one. */
export async function IndexFileForm({
  indices,
  day,
}: Readonly<{ indices: readonly ReferenceIndex[]; day: string }>) {
  const t = await getTranslations("settings.indices");
  const f = await getTranslations("settings.files");
  return (
    <FileForm action={takeIndexForm} words={await fileFormWords()}>
      <DayField name="publishedOn" label={t("publishedOn")} hint={t("publishedOnHint")} start={day} />
      <ChoiceField
        name="index"
        label={t("index")}
        choices={[
          { value: "", label: t("newIndex") },
          ...indices.map(({ id, name, series }) => ({ value: id, label: `${name} (${series})` })),
        ]}
      />
      <Field name="name" label={t("name")} hint={t("newHint")} />
      <Field name="series" label={t("series")} hint={t("seriesHint")} />
      <Field name="publisher" label={t("publisher")} hint={t("publisherHint")} />
      <Field name="base" label={t("base")} hint={t("baseHint")} />
      <ChoiceField
        name="order"
        label={f("order")}
        choices={[
          { value: "", label: f("orderSeen") },
          { value: "month-first", label: f("monthFirst") },
          { value: "day-first", label: f("dayFirst") },
        ]}
      />
    </FileForm>
  );
}
