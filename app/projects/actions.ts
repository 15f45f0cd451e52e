"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { addProject, changeProject, project as projectById } from "../../lib/data/projects.ts";
import { projectEntry, projectPatch } from "../../lib/projects/project-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAmount, typedOrNull } from "../_forms/typed.ts";
import { heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

async function names() {
  const t = await getTranslations("projects");
  return fieldNames({
    name: t("name"),
    status: t("status"),
    statusFrom: t("statusFrom"),
    budget: t("budget"),
    note: t("note"),
  });
}

function typedProject(form: FormData, locale: string) {
  return {
    name: typed(form, "name"),
    status: typed(form, "status"),
    statusFrom: typedOrNull(form, "statusFrom"),
    budget: typedAmount(form, "budget", locale) ?? null,
    note: typedOrNull(form, "note"),
  };
}

/** A new project; then its page. */
export async function addProjectForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addProjectForm", previous, form);
  if (held !== null) return held;
  const input = typedProject(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(projectEntry, input, (entry) => addProject(scope, typed(form, "id") ?? "", entry));
    },
    (project) => `/projects/${project.id}?done=created`,
  );
}

/** A project's name, budget, note, or status from a day on. A status chosen again is no change. */
export async function changeProjectForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("changeProjectForm", previous, form);
  if (held !== null) return held;
  const { status, statusFrom, ...rest } = typedProject(form, await getLocale());
  const same = status === typed(form, "statusBefore") && statusFrom === null;
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(projectPatch, same ? rest : { ...rest, status, statusFrom }, (patch) =>
        changeProject(scope, typed(form, "id") ?? "", patch),
      );
    },
    (project) => `/projects/${project.id}?done=changed`,
    { now: async () => projectById(await scopeSeen(), typed(form, "id") ?? "") },
  );
}
