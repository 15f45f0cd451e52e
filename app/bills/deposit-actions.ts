"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { depositEventEntry } from "../../lib/bills/deposit-event-entry.ts";
import { addDepositEvent, redoDepositEvent, undoDepositEvent } from "../../lib/data/bill-deposits.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAmount, typedOrNull } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

/** So much of a deposit given back or forfeited on a day; then the bill's page. */
export async function depositForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("depositForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("bills");
  const billId = typed(form, "billId") ?? "";
  const input = {
    deposit: Number(typed(form, "deposit") ?? Number.NaN),
    kind: typed(form, "kind"),
    amount: typedAmount(form, "amount", await getLocale()),
    on: typed(form, "on"),
    note: typedOrNull(form, "note"),
  };
  return answer(
    previous,
    form,
    fieldNames({
      deposit: t("deposit"),
      kind: t("becameOf"),
      amount: t("amount"),
      on: t("becameOn"),
      note: t("note"),
    }),
    async () => {
      const scope = await scopeSeen();
      const id = typed(form, "id") ?? "";
      return writeChecked(depositEventEntry, input, (entry) => addDepositEvent(scope, billId, id, entry));
    },
    ({ id }) => `/bills/${billId}?done=deposit&event=${id}`,
  );
}

/** As if it had not happened to the deposit; can be brought back. */
export async function undoDepositForm(form: FormData): Promise<void> {
  await allowed("undoDepositForm");
  const event = typed(form, "event") ?? "";
  await undoDepositEvent(await scopeSeen(), event);
  redirect(`/bills/${typed(form, "id") ?? ""}?done=deposit-undone&event=${event}`);
}

/** Brings back what was undone, if so much is still held. */
export async function redoDepositForm(form: FormData): Promise<void> {
  await allowed("redoDepositForm");
  const event = typed(form, "event") ?? "";
  const written = await redoDepositEvent(await scopeSeen(), event);
  redirect(`/bills/${typed(form, "id") ?? ""}?done=${written.ok ? "deposit" : "deposit-not"}&event=${event}`);
}
