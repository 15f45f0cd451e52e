"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import {
  addMaterial,
  archiveMaterial,
  changeMaterial,
  material,
  restoreMaterial,
} from "../../lib/data/materials.ts";
import { catalogued } from "../../lib/materials/catalogue/catalogue.ts";
import { startedFrom } from "../../lib/materials/catalogue/entry.ts";
import { DIMENSION_NAMES } from "../../lib/materials/material.ts";
import { materialEntry, materialPatch } from "../../lib/materials/material-entry.ts";
import { IDENTITY_NAMES } from "../../lib/show/identity-fields.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { materialTyped } from "./material-typed.ts";

async function names() {
  const t = await getTranslations("materials.form");
  return fieldNames({
    name: t("name"),
    category: t("category"),
    purchaseUnit: t("purchaseUnit"),
    recheckDays: t("recheckDays"),
    exemptFrom: t("exemptFrom"),
    note: t("note"),
    shelfLifeDays: t("shelfLifeDays"),
    ...Object.fromEntries(IDENTITY_NAMES.map((name) => [`identity ${name}`, t(`identity.${name}`)])),
    ...Object.fromEntries(DIMENSION_NAMES.map((name) => [`dimensions ${name}`, t(`size.${name}`)])),
  });
}

/** Adds a material under the id its form was drawn with, begun from the catalogue or not; then its page. */
export async function addMaterialForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addMaterialForm", previous, form);
  if (held !== null) return held;
  const input = materialTyped(form, await getLocale());
  const picked = catalogued(typed(form, "catalogue") ?? "");
  return answer(
    previous,
    form,
    await names(),
    () =>
      writeChecked(materialEntry, input, async (entry) =>
        addMaterial(
          await scopeSeen(),
          typed(form, "id") ?? "",
          picked === null ? entry : startedFrom(picked, entry),
        ),
      ),
    ({ id }) => `/materials/${id}?done=added`,
  );
}

/** Changes a material. */
export async function changeMaterialForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("changeMaterialForm", previous, form);
  if (held !== null) return held;
  const input = materialTyped(form, await getLocale());
  const id = typed(form, "materialId") ?? "";
  return answer(
    previous,
    form,
    await names(),
    () => writeChecked(materialPatch, input, async (patch) => changeMaterial(await scopeSeen(), id, patch)),
    () => `/materials/${id}?done=saved`,
    { now: async () => material(await scopeSeen(), id) },
  );
}

/** Archives a material: it is no longer offered in lists, its prices and figures stay. */
export async function archiveMaterialForm(form: FormData): Promise<void> {
  await allowed("archiveMaterialForm");
  const id = typed(form, "id") ?? "";
  const written = await archiveMaterial(await scopeSeen(), id);
  redirect(written.ok ? `/materials?done=archived&undo=${id}` : "/materials");
}

/** Brings an archived material back into use. */
export async function restoreMaterialForm(form: FormData): Promise<void> {
  await allowed("restoreMaterialForm");
  const id = typed(form, "id") ?? "";
  const written = await restoreMaterial(await scopeSeen(), id);
  if (written.ok) redirect(`/materials?done=restored&undo=${id}`);
  redirect(written.why === "faults" ? "/materials?done=name-taken" : "/materials");
}
