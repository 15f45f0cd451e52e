import { getTranslations } from "next-intl/server";
import { UndoBar } from "../../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { closeMeasured, reopenMeasured } from "./actions.ts";

/** After a takeoff became requirements: how many, and the way back. */
export async function DoneMeasured({ query, projectId }: Readonly<{ query: Query; projectId: string }>) {
  const t = await getTranslations("takeoff");
  const ui = await getTranslations("ui");
  const done = await asked(query, "done");
  const fields = { id: (await asked(query, "takeoff")) ?? "", projectId };
  if (done === "measured-undone")
    return <UndoBar undo={{ action: reopenMeasured, fields, label: ui("undo") }}>{t("doneUndone")}</UndoBar>;
  const close = { action: closeMeasured, fields, label: t("closeAll") };
  if (done === "measured-redone") return <UndoBar undo={close}>{t("doneRedone")}</UndoBar>;
  const count = Number(await asked(query, "count"));
  return <UndoBar undo={close}>{t("done", { count: Number.isInteger(count) ? count : 0 })}</UndoBar>;
}
