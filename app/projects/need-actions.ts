"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { material } from "../../lib/data/materials.ts";
import {
  addRequirement,
  closeRequirement,
  reopenRequirement,
  requirement,
  reviseRequirement,
} from "../../lib/data/requirements.ts";
import { addStockEvent } from "../../lib/data/stock-events.ts";
import { requirementEntry, requirementPatch } from "../../lib/projects/requirement-entry.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAll, typedAmount } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen, today } from "../_workspace/workspace-seen.ts";
import { typedNeed } from "./need-typed.ts";

async function names() {
  const t = await getTranslations("projects");
  return fieldNames({
    materialId: t("material"),
    quantity: t("quantity"),
    unit: t("unit"),
    wastePercent: t("waste"),
    neededBy: t("neededBy"),
    budgetUnitPrice: t("budgetUnitPrice"),
    validFrom: t("validFrom"),
    "alternatives materialId": t("alternative"),
    "alternatives factor": t("factor"),
  });
}

/** A new line of a project; the unit left open is the one the material is bought by. */
export async function addNeedForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addNeedForm", previous, form);
  if (held !== null) return held;
  const scope = await scopeSeen();
  const projectId = typed(form, "projectId") ?? "";
  const materialId = typedAll(form, "materialId")[0];
  const input = { ...typedNeed(form, await getLocale()), materialId };
  let name = "";
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const chosen = materialId === undefined ? null : await material(scope, materialId);
      name = chosen?.name ?? "";
      return writeChecked(requirementEntry, { ...input, unit: input.unit ?? chosen?.purchaseUnit }, (entry) =>
        addRequirement(scope, projectId, typed(form, "id") ?? "", entry),
      );
    },
    (need) => `/projects/${projectId}?done=added&need=${need.id}&name=${encodeURIComponent(name)}`,
  );
}

/** A dated revision of a need. */
export async function reviseNeedForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("reviseNeedForm", previous, form);
  if (held !== null) return held;
  const scope = await scopeSeen();
  const id = typed(form, "requirementId") ?? "";
  const input = typedNeed(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    () => writeChecked(requirementPatch, input, (patch) => reviseRequirement(scope, id, patch)),
    (need) => `/projects/${need.projectId}?done=revised`,
    { now: () => requirement(scope, id) },
  );
}

/** Some of a lot's free stock set aside for a need. */
export async function setAsideForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("setAsideForm", previous, form);
  if (held !== null) return held;
  const stock = await getTranslations("stock");
  const projects = await getTranslations("projects");
  const scope = await scopeSeen();
  const input = {
    kind: "allocated",
    quantity: typedAmount(form, "quantity", await getLocale()),
    on: typed(form, "on"),
    requirementId: typed(form, "requirementId"),
  };
  return answer(
    previous,
    form,
    fieldNames({ quantity: stock("howMany"), on: stock("on"), lotId: projects("lot") }),
    () =>
      writeChecked(stockEventEntry, input, (entry) =>
        addStockEvent(scope, typed(form, "lotId") ?? "", typed(form, "id") ?? "", entry),
      ),
    () => `/projects/${typed(form, "projectId") ?? ""}?done=set-aside`,
  );
}

/** Closes a need: nothing is open for it from today on. Closed already, it stays so. */
export async function closeNeed(form: FormData): Promise<void> {
  await allowed("closeNeed");
  const id = typed(form, "id") ?? "";
  await closeRequirement(await scopeSeen(), id, await today());
  redirect(`/projects/${typed(form, "projectId") ?? ""}?done=closed&need=${id}`);
}

/** Opens a closed need again. */
export async function reopenNeed(form: FormData): Promise<void> {
  await allowed("reopenNeed");
  const id = typed(form, "id") ?? "";
  await reopenRequirement(await scopeSeen(), id);
  redirect(`/projects/${typed(form, "projectId") ?? ""}?done=reopened&need=${id}`);
}
