import { getTranslations } from "next-intl/server";
import { stockAct } from "../../lib/data/stock-acts.ts";
import { UndoBar } from "../_ui/undo-bar.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { isId } from "../_workspace/id-asked.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { redoActForm, undoActForm } from "./act-actions.ts";
import { Cannot } from "./cannot.tsx";

/** After several things were done as one: says so, with one undo for all of them; or why it could not be taken back. */
export async function ActBar({ query, back }: Readonly<{ query: Query; back: string }>) {
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const done = await asked(query, "done");
  if (done === "cannot") return <Cannot query={query} />;
  const id = await asked(query, "act");
  if (done !== "act" || !isId(id)) return null;
  const act = await stockAct(await scopeSeen(), id);
  if (act === null) return null;
  const fields = { id: act.id, back };
  if (act.undoneAt !== null)
    return (
      <UndoBar undo={{ action: redoActForm, fields, label: stock("redo") }}>{stock("doneUndone")}</UndoBar>
    );
  return (
    <UndoBar undo={{ action: undoActForm, fields, label: ui("undo") }}>
      {t(`acts.${act.kind}`, { events: act.events.length })}
    </UndoBar>
  );
}
