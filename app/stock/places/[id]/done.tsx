import { getTranslations } from "next-intl/server";
import { UndoBar } from "../../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { ActBar } from "../../act-bar.tsx";
import { archivePlaceForm, restorePlaceForm } from "../actions.ts";

const SAID = ["added", "changed", "restored", "name-taken", "as-in-books"] as const;

/** What was just done to a place or to what lies there, and the way back. */
export async function PlaceDone({ query, id }: Readonly<{ query: Query; id: string }>) {
  const t = await getTranslations("places");
  const ui = await getTranslations("ui");
  const done = await asked(query, "done");
  const fields = { id };
  if (done === "archived")
    return (
      <UndoBar undo={{ action: restorePlaceForm, fields, label: ui("undo") }}>{t("done.archived")}</UndoBar>
    );
  const known = SAID.find((one) => one === done);
  if (known === "restored")
    return (
      <UndoBar undo={{ action: archivePlaceForm, fields, label: ui("undo") }}>{t("done.restored")}</UndoBar>
    );
  if (known !== undefined) return <UndoBar>{t(`done.${known}`)}</UndoBar>;
  return <ActBar query={query} back={`/stock/places/${id}`} />;
}
