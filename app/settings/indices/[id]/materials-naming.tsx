import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Button } from "../../../_ui/button.client.tsx";
import fieldStyle from "../../../_ui/field.module.css";
import formStyle from "../../../_ui/form.module.css";
import { Part } from "../../../_ui/page-head.tsx";
import { nameMaterialIndex } from "../actions.ts";

type Named = Readonly<{ id: string; name: string }>;

/** The materials held against an index, and one more. */
export async function MaterialsNaming({
  id,
  naming,
  materials,
}: Readonly<{ id: string; naming: readonly Named[]; materials: readonly Named[] }>) {
  const t = await getTranslations("settings.indices");
  const others = materials.filter((one) => !naming.some((named) => named.id === one.id));
  return (
    <Part title={t("materials")} note={t("materialsNote")}>
      {naming.map((material) => (
        <form key={material.id} action={nameMaterialIndex}>
          <Link href={`/materials/${material.id}`}>{material.name}</Link>{" "}
          <input type="hidden" name="material" value={material.id} />
          <input type="hidden" name="page" value={id} />
          <Button kind="quiet" label={t("takeOffOf", { name: material.name })}>
            {t("takeOff")}
          </Button>
        </form>
      ))}
      {others.length > 0 ? (
        <form action={nameMaterialIndex} className={formStyle.form}>
          <input type="hidden" name="index" value={id} />
          <input type="hidden" name="page" value={id} />
          <label className={fieldStyle.label} htmlFor="material">
            {t("material")}
          </label>
          <select className={fieldStyle.input} id="material" name="material">
            {others.map((material) => (
              <option key={material.id} value={material.id}>
                {material.name}
              </option>
            ))}
          </select>
          <Button kind="plain">{t("hold")}</Button>
        </form>
      ) : null}
    </Part>
  );
}
