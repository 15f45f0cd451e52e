"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addLot, deleteLot, undeleteLot } from "../../lib/data/lots.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { typedLot } from "./lot-typed.ts";

async function names() {
  const t = await getTranslations("stock");
  return fieldNames({
    materialId: t("material"),
    origin: t("origin"),
    quantity: t("quantity"),
    "paid amount": t("paid"),
    "paid currency": t("currency"),
    "paid taxRegion": t("taxRegion"),
    "paid fees name": t("feeName"),
    "paid fees amount": t("feeAmount"),
    paidHome: t("paidHome", { currency: "" }).trim(),
    orderedOn: t("orderedOn"),
    acquiredOn: t("acquiredOn"),
    condition: t("condition"),
    storedAt: t("storedAt"),
    storeId: t("store"),
    requirementId: t("forProject"),
    givenFree: t("givenFree"),
    otherCurrency: t("otherCurrency"),
    expectedOn: t("expectedOn"),
    returnableUntil: t("returnableUntil"),
    adjustableUntil: t("adjustableUntil"),
    restockingPercent: t("restockingPercent"),
    "payments amount": t("paymentAmount"),
    "payments on": t("paymentOn"),
    note: t("note"),
  });
}

/** A lot as its receipt says, set aside for a need where one is chosen; then its page. */
export async function recordLotForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("recordLotForm", previous, form);
  if (held !== null) return held;
  const input = typedLot(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(lotEntry, input, (entry) =>
        addLot(scope, typed(form, "id") ?? "", entry, { allocateTo: typed(form, "requirementId") }),
      );
    },
    (lot) => `/stock/${lot.id}?done=recorded`,
  );
}

/** Out of the books, with everything that happened to it; can be brought back. */
export async function deleteLotForm(form: FormData): Promise<void> {
  await allowed("deleteLotForm");
  const id = typed(form, "id") ?? "";
  await deleteLot(await scopeSeen(), id);
  redirect(`/stock?done=deleted&lot=${id}`);
}

/** Brings a deleted lot back into the books. */
export async function undeleteLotForm(form: FormData): Promise<void> {
  await allowed("undeleteLotForm");
  const id = typed(form, "id") ?? "";
  await undeleteLot(await scopeSeen(), id);
  redirect(`/stock/${id}?done=restored`);
}
