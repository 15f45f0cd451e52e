import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { Button } from "../_ui/button.client.tsx";
import { archiveMaterialForm, restoreMaterialForm } from "./actions.ts";
import style from "./materials.module.css";

/** Takes a material out of use, or brings it back. */
export async function ArchiveButton({ material }: Readonly<{ material: Material }>) {
  const t = await getTranslations("materials.page");
  const { id, archivedOn } = material;
  return (
    <form action={archivedOn === null ? archiveMaterialForm : restoreMaterialForm} className={style.row}>
      <input type="hidden" name="id" value={id} />
      <Button kind="plain">{t(archivedOn === null ? "archive" : "restore")}</Button>
      <p className={style.quiet}>
        {archivedOn === null
          ? t("archiveText")
          : t("archivedOn", { day: dayText(archivedOn, await getLocale()) })}
      </p>
    </form>
  );
}
