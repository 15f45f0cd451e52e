import { getTranslations } from "next-intl/server";
import { UndoBar } from "../_ui/undo-bar.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { undeleteLotForm } from "./actions.ts";

/** After a lot was deleted: says so and offers it back. */
export async function Done({ query }: Readonly<{ query: Query }>) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  if ((await asked(query, "done")) !== "deleted") return null;
  const id = (await asked(query, "lot")) ?? "";
  return (
    <UndoBar undo={{ action: undeleteLotForm, fields: { id }, label: ui("undo") }}>
      {t("doneDeleted")}
    </UndoBar>
  );
}
