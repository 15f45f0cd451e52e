import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../lib/materials/material.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { Button } from "../_ui/button.client.tsx";
import { Part } from "../_ui/page-head.tsx";
import { Table } from "../_ui/table.tsx";
import { restoreMaterialForm } from "./actions.ts";

/** Materials out of use, each with a way back. Nothing when there are none. */
export async function ArchivedTable({ materials }: Readonly<{ materials: readonly Material[] }>) {
  const t = await getTranslations("materials");
  const s = await getTranslations("settings");
  const locale = await getLocale();
  if (materials.length === 0) return null;
  return (
    <Part title={t("archived")}>
      <Table
        caption={t("archived")}
        captionHidden
        least="20rem"
        columns={[
          { key: "name", label: t("material") },
          { key: "restore", label: t("page.restore"), quiet: true },
        ]}
        rows={materials.map(({ id, name, archivedOn }) => ({
          key: id,
          cells: [
            <Link key="name" href={`/materials/${id}`}>
              {name}
            </Link>,
            <form key="restore" action={restoreMaterialForm}>
              {archivedOn === null ? "" : s("archivedOn", { day: dayText(archivedOn, locale) })}{" "}
              <input type="hidden" name="id" value={id} />
              <Button kind="quiet" label={t("restoreOne", { name })}>
                {t("page.restore")}
              </Button>
            </form>,
          ],
        }))}
      />
    </Part>
  );
}
