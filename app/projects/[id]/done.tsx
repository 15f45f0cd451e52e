import { getTranslations } from "next-intl/server";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { ActBar } from "../../stock/act-bar.tsx";
import { closeNeed, reopenNeed } from "../need-actions.ts";
import { DoneMeasured } from "./takeoff/done-measured.tsx";

const SAID = {
  created: "doneCreated",
  changed: "doneChanged",
  revised: "doneChanged",
  "set-aside": "doneSetAside",
} as const;

/** After a change: what was done, and the way back where there is one. */
export async function Done({ query, projectId }: Readonly<{ query: Query; projectId: string }>) {
  const t = await getTranslations("projects");
  const ui = await getTranslations("ui");
  const done = await asked(query, "done");
  const need = (await asked(query, "need")) ?? "";
  const fields = { id: need, projectId };
  if (done === "added")
    return (
      <UndoBar undo={{ action: closeNeed, fields, label: t("close") }}>
        {t("doneAdded", { name: (await asked(query, "name")) ?? "" })}
      </UndoBar>
    );
  if (done === "closed")
    return <UndoBar undo={{ action: reopenNeed, fields, label: ui("undo") }}>{t("doneClosed")}</UndoBar>;
  if (done === "reopened")
    return <UndoBar undo={{ action: closeNeed, fields, label: ui("undo") }}>{t("doneReopened")}</UndoBar>;
  if (done === "act" || done === "cannot") return <ActBar query={query} back={`/projects/${projectId}`} />;
  if (done?.startsWith("measured")) return <DoneMeasured query={query} projectId={projectId} />;
  if (done === undefined || !(done in SAID)) return null;
  return <UndoBar>{t(SAID[done as keyof typeof SAID])}</UndoBar>;
}
