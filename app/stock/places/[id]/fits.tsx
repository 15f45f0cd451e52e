import { getLocale, getTranslations } from "next-intl/server";
import type { PlaceContents } from "../../../../lib/data/place-contents.ts";
import type { Material } from "../../../../lib/materials/material.ts";
import { fitsText } from "../../../../lib/show/place-text.ts";
import { fitsIn } from "../../../../lib/stock/place-room.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Options } from "../../../_ui/choice-field.client.tsx";
import fields from "../../../_ui/field.module.css";
import find from "../../../_ui/find-form.module.css";
import { Part } from "../../../_ui/page-head.tsx";
import { unitWords } from "../../../_words/unit-words.ts";

type FitsProps = Readonly<{
  contents: PlaceContents;
  materials: readonly Material[];
  chosen: Material | null;
}>;

/** How many more of a material go into the place, and which limit says so. A plain GET form: the address can be kept. */
export async function WhatFits({ contents, materials, chosen }: FitsProps) {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const { place } = contents;
  return (
    <Part title={t("fitsTitle")} id="fits">
      <form key={chosen?.id} action={`/stock/places/${place.id}`} method="get" className={find.form}>
        <label className={find.field}>
          <span>{t("fitsMaterial")}</span>
          <select name="material" className={fields.input} defaultValue={chosen?.id ?? ""}>
            <Options
              choices={[
                { value: "", label: stock("choose") },
                ...materials.map(({ id, name }) => ({ value: id, label: name })),
              ]}
            />
          </select>
        </label>
        <Button kind="plain">{t("fitsShow")}</Button>
      </form>
      {chosen === null ? null : <Answer contents={contents} material={chosen} />}
    </Part>
  );
}

async function Answer({ contents, material }: Readonly<{ contents: PlaceContents; material: Material }>) {
  const t = await getTranslations("places");
  const units = await unitWords();
  const fits = fitsText(fitsIn(contents.place, contents.loads, material), await getLocale());
  const unsure = fits.unknown.map((measure) => t(`limits.${measure}`)).join(", ");
  return (
    <div role="status">
      <p>
        {fits.quantity === null
          ? t(fits.unknown.length > 0 ? "fitsCannotTell" : "fitsNoLimit", { material: material.name })
          : t("fits", {
              quantity: fits.quantity.text,
              unit: units.of(material.purchaseUnit, fits.quantity.exact),
              material: material.name,
              by: fits.by === null ? "" : t(`limits.${fits.by}`),
              sure: fits.atMost ? "no" : "yes",
            })}
      </p>
      {fits.unknown.length > 0 ? <p>{t("fitsUnknown", { limits: unsure })}</p> : null}
    </div>
  );
}
