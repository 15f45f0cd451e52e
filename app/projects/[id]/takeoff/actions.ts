"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addTakeoff, reviseTakeoff, undoTakeoff } from "../../../../lib/data/takeoffs.ts";
import type { Written } from "../../../../lib/fault.ts";
import { takeoffNeedsEntry } from "../../../../lib/projects/takeoff-needs.ts";
import { answer, writeChecked } from "../../../_forms/answer.ts";
import { fieldNames } from "../../../_forms/field-names.ts";
import { rowsTyped, typed, typedAmount, typedOrNull } from "../../../_forms/typed.ts";
import { allowed, heldBack } from "../../../_gate/allowed.ts";
import type { FormState } from "../../../_ui/form-state.ts";
import { isId } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";

async function names() {
  const t = await getTranslations("takeoff");
  return fieldNames({
    "": t("material"),
    "needs materialId": t("material"),
    "needs wastePercent": t("waste"),
    "needs holds": t("holds"),
    neededBy: t("neededBy"),
  });
}

function takeoffTyped(form: FormData): unknown {
  try {
    return JSON.parse(typed(form, "takeoff") ?? "");
  } catch {
    return undefined;
  }
}

function needsTyped(form: FormData, locale: string) {
  return rowsTyped(form, "needs").map((row) => ({
    line: typed(form, `needs.${row}.line`),
    id: typed(form, `needs.${row}.id`),
    materialId: typedOrNull(form, `needs.${row}.materialId`),
    wastePercent: typedAmount(form, `needs.${row}.wastePercent`, locale) ?? "0",
    holds: typed(form, `needs.${row}.holds`),
  }));
}

/** That nothing was chosen belongs to no one field. */
function ofTheForm<T>(written: Written<T>): Written<T> {
  if (written.ok || written.why !== "faults") return written;
  const faults = written.faults.map((one) => (one.path === "needs" ? { ...one, path: "" } : one));
  return { ...written, faults };
}

/** A takeoff kept with its inputs and its chosen lines as requirements; of one opened again, their revisions. */
export async function keepTakeoffForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("keepTakeoffForm", previous, form);
  if (held !== null) return held;
  const scope = await scopeSeen();
  const projectId = typed(form, "projectId") ?? "";
  const reopen = typed(form, "reopen");
  const input = {
    takeoff: takeoffTyped(form),
    neededBy: typed(form, "neededBy"),
    needs: needsTyped(form, await getLocale()),
  };
  const chosen = input.needs.filter(({ materialId }) => materialId !== null).length;
  return answer(
    previous,
    form,
    await names(),
    async () =>
      ofTheForm(
        await writeChecked(takeoffNeedsEntry, input, (entry) =>
          reopen === undefined
            ? addTakeoff(scope, projectId, typed(form, "id") ?? "", entry)
            : reviseTakeoff(scope, isId(reopen) ? reopen : "", entry),
        ),
      ),
    (made) =>
      reopen === undefined
        ? `/projects/${made.projectId}?done=measured&takeoff=${made.id}&count=${chosen}`
        : `/projects/${made.projectId}?done=revised&takeoff=${made.id}`,
  );
}

async function setUndone(form: FormData, undone: boolean): Promise<void> {
  const id = typed(form, "id");
  const projectId = typed(form, "projectId") ?? "";
  if (isId(id)) await undoTakeoff(await scopeSeen(), id, undone);
  redirect(`/projects/${projectId}?done=measured-${undone ? "undone" : "redone"}&takeoff=${id ?? ""}`);
}

/** Closes everything made of a takeoff. */
export async function closeMeasured(form: FormData): Promise<void> {
  await allowed("closeMeasured");
  await setUndone(form, true);
}

/** Opens everything made of a takeoff again. */
export async function reopenMeasured(form: FormData): Promise<void> {
  await allowed("reopenMeasured");
  await setUndone(form, false);
}
