import { getLocale, getTranslations } from "next-intl/server";
import type { TakenFile } from "../../../lib/data/taken-files.ts";
import { momentText } from "../../../lib/show/day-text.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { redoFile, undoFile } from "./actions.ts";

/** The files taken in, the newest first, each to be taken back or brought back as one. */
export async function FilesList({ files }: Readonly<{ files: readonly TakenFile[] }>) {
  const t = await getTranslations("settings.files");
  const locale = await getLocale();
  const { timeZone } = await workspaceSeen();
  if (files.length === 0) return null;
  return (
    <Part title={t("list")} note={t("listNote")}>
      <Table
        caption={t("list")}
        captionHidden
        cards
        columns={[
          { key: "name", label: t("name") },
          { key: "source", label: t("source") },
          { key: "when", label: t("when") },
          { key: "added", label: t("added"), figures: true },
          { key: "undo", label: t("undoColumn"), quiet: true },
        ]}
        rows={files.map(({ id, kind, name, source, takenAt, added, undoneAt }) => ({
          key: id,
          faint: undoneAt !== null,
          cells: [
            name,
            source,
            momentText(takenAt, locale, timeZone),
            undoneAt === null ? String(added) : t("undone"),
            <form key="undo" action={undoneAt === null ? undoFile : redoFile}>
              <input type="hidden" name="id" value={id} />
              <input type="hidden" name="kind" value={kind} />
              <Button kind="quiet" label={t(undoneAt === null ? "undoOf" : "redoOf", { name })}>
                {t(undoneAt === null ? "undo" : "redo")}
              </Button>
            </form>,
          ],
        }))}
      />
    </Part>
  );
}
