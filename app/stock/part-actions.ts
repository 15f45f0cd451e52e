"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addPayment, redoPayment, undoPayment } from "../../lib/data/lot-payments.ts";
import { addReceipt, redoReceipt, undoReceipt } from "../../lib/data/lot-receipts.ts";
import type { Written } from "../../lib/fault.ts";
import { paymentEntry, receiptEntry } from "../../lib/stock/stock-act-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAmount } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { afterRefusal } from "./undo-refused.ts";

/** Some of what was ordered has come in. */
export async function receiveForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("receiveForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("lotLife");
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    quantity: typedAmount(form, "quantity", await getLocale()),
    on: typed(form, "on"),
    placeId: typed(form, "placeId") ?? null,
  };
  return answer(
    previous,
    form,
    fieldNames({ quantity: t("receive.many"), on: t("receive.on"), placeId: t("receive.to") }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(receiptEntry, input, (entry) =>
        addReceipt(scope, lotId, typed(form, "id") ?? "", entry),
      );
    },
    ({ id }) => `/stock/${lotId}?done=received&receipt=${id}`,
  );
}

/** Money paid on a lot that was ordered. */
export async function payForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("payForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("lotLife");
  const locale = await getLocale();
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    amount: typedAmount(form, "amount", locale),
    on: typed(form, "on"),
    home: typedAmount(form, "home", locale) ?? null,
  };
  return answer(
    previous,
    form,
    fieldNames({ amount: t("pay.amount"), on: t("pay.on"), home: t("pay.home") }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(paymentEntry, input, (entry) =>
        addPayment(scope, lotId, typed(form, "id") ?? "", entry),
      );
    },
    ({ id }) => `/stock/${lotId}?done=paid&payment=${id}`,
  );
}

function after(form: FormData, written: Written<{ id: string }>, done: "received" | "paid"): never {
  const lot = `/stock/${typed(form, "lotId") ?? ""}`;
  if (!written.ok) redirect(`${lot}?${afterRefusal(written)}`);
  redirect(`${lot}?done=${done}&${done === "received" ? "receipt" : "payment"}=${written.value.id}`);
}

/** As if it had not come in. */
export async function undoReceiptForm(form: FormData): Promise<void> {
  await allowed("undoReceiptForm");
  after(form, await undoReceipt(await scopeSeen(), typed(form, "id") ?? ""), "received");
}

/** It came in after all. */
export async function redoReceiptForm(form: FormData): Promise<void> {
  await allowed("redoReceiptForm");
  after(form, await redoReceipt(await scopeSeen(), typed(form, "id") ?? ""), "received");
}

/** As if it had not been paid. */
export async function undoPaymentForm(form: FormData): Promise<void> {
  await allowed("undoPaymentForm");
  after(form, await undoPayment(await scopeSeen(), typed(form, "id") ?? ""), "paid");
}

/** It was paid after all. */
export async function redoPaymentForm(form: FormData): Promise<void> {
  await allowed("redoPaymentForm");
  after(form, await redoPayment(await scopeSeen(), typed(form, "id") ?? ""), "paid");
}
