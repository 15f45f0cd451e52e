"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import {
  correctObservation,
  deleteObservation,
  observation,
  undeleteObservation,
} from "../../lib/data/observations.ts";
import { observationCorrection } from "../../lib/prices/observation-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { correctionTyped } from "./correction-typed.ts";

async function names() {
  const t = await getTranslations("materials.correct");
  return fieldNames({
    seenOn: t("seenOn"),
    terms: t("terms"),
    amount: t("amount"),
    currency: t("currency"),
    per: t("per"),
    "per quantity": t("per"),
    "per unit": t("perUnit"),
    taxIncluded: t("tax"),
    taxRegion: t("taxRegion"),
    minQuantity: t("min"),
    maxQuantity: t("max"),
    packSize: t("packSize"),
    from: t("from"),
    until: t("until"),
    note: t("note"),
    reason: t("reason"),
    "fees name": t("feeName"),
    "fees amount": t("feeAmount"),
    "fees percent": t("feePercent"),
    "fees freeFrom": t("feeFreeFrom"),
  });
}

/** Puts right what was read or typed wrong; what it said before stays readable. */
export async function correctPriceForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("correctPriceForm", previous, form);
  if (held !== null) return held;
  const id = typed(form, "priceId") ?? "";
  const input = correctionTyped(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    () =>
      writeChecked(observationCorrection, input, async ({ reason, ...patch }) =>
        correctObservation(await scopeSeen(), id, patch, reason),
      ),
    ({ materialId }) => `/materials/${materialId}?done=corrected`,
    { now: async () => observation(await scopeSeen(), id) },
  );
}

/** Takes a price out of every figure; it stays in the list, struck through. */
export async function takePriceBack(form: FormData): Promise<void> {
  await allowed("takePriceBack");
  const id = typed(form, "id") ?? "";
  const written = await deleteObservation(await scopeSeen(), id);
  redirect(written.ok ? `/materials/${written.value.materialId}?done=deleted&undo=${id}` : "/materials");
}

/** Brings a price taken back into the figures again. */
export async function bringPriceBack(form: FormData): Promise<void> {
  await allowed("bringPriceBack");
  const id = typed(form, "id") ?? "";
  const written = await undeleteObservation(await scopeSeen(), id);
  redirect(written.ok ? `/materials/${written.value.materialId}?done=undeleted&undo=${id}` : "/materials");
}
