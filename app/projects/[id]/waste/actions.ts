"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import {
  addDisposal,
  correctDisposal,
  disposal,
  redoDisposal,
  undoDisposal,
} from "../../../../lib/data/disposals.ts";
import type { Written } from "../../../../lib/fault.ts";
import { disposalEntry } from "../../../../lib/projects/disposal-entry.ts";
import { answer, writeChecked } from "../../../_forms/answer.ts";
import { fieldNames } from "../../../_forms/field-names.ts";
import { typed } from "../../../_forms/typed.ts";
import { allowed, heldBack } from "../../../_gate/allowed.ts";
import type { FormState } from "../../../_ui/form-state.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { typedWaste } from "./waste-typed.ts";

async function names() {
  const t = await getTranslations("waste");
  return fieldNames({
    kind: t("kind"),
    on: t("on"),
    feeBasis: t("basis"),
    fee: t("fee"),
    least: t("least"),
    loads: t("loads"),
    hauling: t("hauling"),
    currency: t("currency"),
    taxRegion: t("taxRegion"),
    weight: t("weight"),
    materialId: t("material"),
    quantity: t("quantity"),
    note: t("noteField"),
  });
}

/** The weight is one field of the form and two of the entry: its fault stands at the field. */
function atWeight<T>(written: Written<T>): Written<T> {
  if (written.ok || written.why !== "faults") return written;
  return {
    ...written,
    faults: written.faults.map((fault) =>
      fault.path.startsWith("weight.") ? { ...fault, path: "weight" } : fault,
    ),
  };
}

/** Waste gotten rid of; then its project. */
export async function addWasteForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addWasteForm", previous, form);
  if (held !== null) return held;
  const projectId = typed(form, "projectId") ?? "";
  const input = typedWaste(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return atWeight(
        await writeChecked(disposalEntry, input, (entry) =>
          addDisposal(scope, projectId, typed(form, "id") ?? "", entry),
        ),
      );
    },
    ({ id }) => `/projects/${projectId}?done=waste-added&waste=${id}#waste`,
  );
}

/** Waste corrected, all of it; then its project. */
export async function correctWasteForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("correctWasteForm", previous, form);
  if (held !== null) return held;
  const id = typed(form, "wasteId") ?? "";
  const input = typedWaste(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return atWeight(await writeChecked(disposalEntry, input, (entry) => correctDisposal(scope, id, entry)));
    },
    ({ projectId }) => `/projects/${projectId}?done=waste-changed#waste`,
    { now: async () => disposal(await scopeSeen(), id) },
  );
}

/** Takes waste that was recorded back. */
export async function undoWaste(form: FormData): Promise<void> {
  await allowed("undoWaste");
  const id = typed(form, "id") ?? "";
  await undoDisposal(await scopeSeen(), id);
  redirect(`/projects/${typed(form, "projectId") ?? ""}?done=waste-undone&waste=${id}#waste`);
}

/** Lets it have been recorded again. */
export async function redoWaste(form: FormData): Promise<void> {
  await allowed("redoWaste");
  const id = typed(form, "id") ?? "";
  await redoDisposal(await scopeSeen(), id);
  redirect(`/projects/${typed(form, "projectId") ?? ""}?done=waste-redone&waste=${id}#waste`);
}
