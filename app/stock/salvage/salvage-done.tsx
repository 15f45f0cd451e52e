import { getTranslations } from "next-intl/server";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { undoAsked } from "./sale-actions.ts";

/** What was just done about a lot as salvage, or put up for sale; and the way back where there is one. */
export async function SalvageDone({
  query,
  lotId,
  name,
}: Readonly<{ query: Query; lotId: string; name: string }>) {
  const t = await getTranslations("salvage");
  const ui = await getTranslations("ui");
  const done = await asked(query, "done");
  const id = await asked(query, "asked");
  if (done === "counted-in") return <UndoBar>{t("doneCounted", { material: name })}</UndoBar>;
  if (done === "salvage-corrected") return <UndoBar>{t("doneCorrected")}</UndoBar>;
  if (done === "asked-undone") return <UndoBar>{t("doneAskedUndone")}</UndoBar>;
  if ((done !== "asked" && done !== "withdrawn") || !isId(id)) return null;
  return (
    <UndoBar undo={{ action: undoAsked, fields: { id, lotId }, label: ui("undo") }}>
      {t(done === "asked" ? "doneAsked" : "doneWithdrawn")}
    </UndoBar>
  );
}
