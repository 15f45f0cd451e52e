import { getTranslations } from "next-intl/server";
import { CATEGORIES } from "../../../lib/materials/material.ts";
import { FindForm } from "../../_ui/find-form.tsx";

/** Finds in the catalogue by any words and by kind. */
export async function FindInCatalogue({
  typed = "",
  kind = "",
}: Readonly<{ typed?: string; kind?: string }>) {
  const t = await getTranslations("materials");
  const c = await getTranslations("categories");
  return (
    <FindForm
      path="/materials/new/catalogue"
      typed={typed}
      kind={kind}
      kinds={[
        { value: "", label: t("allCategories") },
        ...CATEGORIES.map((one) => ({ value: one, label: c(one) })),
      ]}
      words={{
        find: t("find"),
        hint: t("form.catalogueHint"),
        kind: t("category"),
        show: t("filter"),
        clear: t("clear"),
      }}
    />
  );
}
