"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addStore, archiveStore, changeStore, restoreStore, store } from "../../../lib/data/stores.ts";
import { storeEntry, storePatch } from "../../../lib/prices/store-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed, heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { storeTyped } from "./store-typed.ts";

async function names() {
  const t = await getTranslations("settings.stores");
  const s = await getTranslations("settings");
  return fieldNames({
    name: t("nameLabel"),
    taxRegion: t("taxRegion"),
    currency: t("currency"),
    "tripCost amount": t("tripCost"),
    distanceKm: t("distance"),
    returnDays: t("returnDays"),
    priceAdjustmentDays: t("priceAdjustmentDays"),
    restockingPercent: t("restockingPercent"),
    leadDays: t("leadDays"),
    "discounts percent": t("percent"),
    "discounts from": s("from"),
    "discounts until": s("until"),
    "importCharges name": t("chargeName"),
    "importCharges percent": t("chargePercent"),
    "importCharges perOrder": t("perOrder"),
    "importCharges from": s("from"),
    "importCharges until": s("until"),
  });
}

/** Adds a store under the id its form was drawn with. */
export async function addStoreForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addStoreForm", previous, form);
  if (held !== null) return held;
  const input = storeTyped(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    () =>
      writeChecked(storeEntry, input, async (entry) =>
        addStore(await scopeSeen(), typed(form, "id") ?? "", entry),
      ),
    () => "/settings/stores?done=store-added",
  );
}

/** Changes a store. */
export async function changeStoreForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("changeStoreForm", previous, form);
  if (held !== null) return held;
  const input = storeTyped(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    () =>
      writeChecked(storePatch, input, async (patch) =>
        changeStore(await scopeSeen(), typed(form, "storeId") ?? "", patch),
      ),
    () => "/settings/stores?done=saved",
    { now: async () => store(await scopeSeen(), typed(form, "storeId") ?? "") },
  );
}

/** Archives a store: it is no longer offered, its prices and figures stay. */
export async function archiveStoreForm(form: FormData): Promise<void> {
  await allowed("archiveStoreForm");
  const id = typed(form, "id") ?? "";
  const written = await archiveStore(await scopeSeen(), id);
  redirect(written.ok ? `/settings/stores?done=store-archived&undo=${id}` : "/settings/stores");
}

/** Brings an archived store back into use. */
export async function restoreStoreForm(form: FormData): Promise<void> {
  await allowed("restoreStoreForm");
  const written = await restoreStore(await scopeSeen(), typed(form, "id") ?? "");
  if (written.ok) redirect("/settings/stores?done=store-restored");
  redirect(written.why === "faults" ? "/settings/stores?done=name-taken" : "/settings/stores");
}
