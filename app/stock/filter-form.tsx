import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { StockFilter } from "../../lib/show/stock-filter.ts";
import { Button } from "../_ui/button.client.tsx";
import { type Choice, Options } from "../_ui/choice-field.client.tsx";
import fields from "../_ui/field.module.css";
import style from "../_ui/find-form.module.css";
import { More } from "../_ui/more.tsx";

type FilterFormProps = Readonly<{
  filter: StockFilter;
  places: readonly Choice[];
  projects: readonly Choice[];
  materials: readonly Choice[];
}>;

/** Narrows the list of lots by place, project and material. A plain GET form: the address can be kept. */
export async function FilterForm({ filter, places, projects, materials }: FilterFormProps) {
  const t = await getTranslations("lotLife");
  const one = (
    name: string,
    label: string,
    all: string,
    choices: readonly Choice[],
    chosen: string | null,
  ) => (
    <label className={style.field}>
      <span>{label}</span>
      <select name={name} className={fields.input} defaultValue={chosen ?? ""}>
        <Options choices={[{ value: "", label: all }, ...choices]} />
      </select>
    </label>
  );
  const { placeId, projectId, materialId } = filter;
  return (
    <search>
      <More title={t("filter.title")} open={Boolean(placeId ?? projectId ?? materialId)}>
        <form key={Object.values(filter).join()} action="/stock" method="get" className={style.form}>
          {one("place", t("filter.place"), t("filter.everywhere"), places, placeId)}
          {one("project", t("filter.project"), t("filter.allProjects"), projects, projectId)}
          {one("material", t("filter.material"), t("filter.allMaterials"), materials, materialId)}
          <Button kind="plain">{t("filter.show")}</Button>
          {(placeId ?? projectId ?? materialId) ? (
            <Link href="/stock" className={style.clear}>
              {t("filter.all")}
            </Link>
          ) : null}
        </form>
      </More>
    </search>
  );
}
