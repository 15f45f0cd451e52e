import { getTranslations } from "next-intl/server";
import { disposal } from "../../../../lib/data/disposals.ts";
import { UndoBar } from "../../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { isId } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { redoWaste, undoWaste } from "./actions.ts";

/** What was just done about a project's waste, and the way back. */
export async function WasteDone({ query, projectId }: Readonly<{ query: Query; projectId: string }>) {
  const t = await getTranslations("waste");
  const ui = await getTranslations("ui");
  const done = await asked(query, "done");
  const id = await asked(query, "waste");
  if (done === "waste-changed") return <UndoBar>{t("doneChanged")}</UndoBar>;
  if (!done?.startsWith("waste-") || !isId(id)) return null;
  const waste = await disposal(await scopeSeen(), id);
  if (waste === null) return null;
  const fields = { id, projectId };
  if (waste.undoneAt !== null)
    return <UndoBar undo={{ action: redoWaste, fields, label: t("redo") }}>{t("doneUndone")}</UndoBar>;
  return (
    <UndoBar undo={{ action: undoWaste, fields, label: ui("undo") }}>
      {done === "waste-redone" ? t("doneRedone") : t("doneAdded", { kind: t(`kinds.${waste.kind}`) })}
    </UndoBar>
  );
}
