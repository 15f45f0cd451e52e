"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { billEntry } from "../../lib/bills/bill-entry.ts";
import { addBill, redoBill, undoBill } from "../../lib/data/bills.ts";
import type { Written } from "../../lib/fault.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { rowPath, typedBill } from "./bill-typed.ts";

/** The fields of a line by their paths, named with the line's number, so that a list of faults says which line. */
async function names() {
  const t = await getTranslations("bills");
  const whole = fieldNames({
    storeId: t("store"),
    on: t("on"),
    until: t("until"),
    currency: t("currency"),
    taxRegion: t("deliveredTo"),
    printedTotal: t("printedTotal"),
    paidHome: t("paidHome", { currency: "" }).trim(),
    taxIncluded: t("tax"),
    taxRounding: t("taxRounding"),
    "fees name": t("name"),
    "fees amount": t("amount"),
    "fees percent": t("feePercent"),
    "deposits name": t("name"),
    "deposits amount": t("amount"),
    "rebates name": t("name"),
    "rebates amount": t("amount"),
    storedAt: t("storedAt"),
    note: t("note"),
  });
  const inLine = fieldNames({
    "lines materialId": t("material"),
    "lines text": t("text"),
    "lines quantity": t("quantity"),
    "lines unit": t("unit"),
    "lines price amount": t("price"),
    "lines price per quantity": t("per"),
    "lines price per unit": t("perUnit"),
    "lines discount percent": t("discountPercent"),
    "lines discount amount": t("discountAmount"),
    "lines returned percent": t("restocking"),
    "lines returned amount": t("restockingAmount"),
    "lines returned lotId": t("ofLot"),
    "lines fees name": t("lineFee"),
    "lines fees amount": t("feeEach"),
    "lines fees percent": t("feePercent"),
    "lines keep": t("keep"),
  });
  return (path: string) => {
    const field = inLine(path);
    const [, row] = path.split(".");
    return field === null ? whole(path) : `${t("line", { number: Number(row) + 1 })}, ${field}`;
  };
}

/** Faults at the rows of the form they belong to. */
function atRows<T>(written: Written<T>, form: FormData): Written<T> {
  if (written.ok || written.why !== "faults") return written;
  return {
    ...written,
    faults: written.faults.map((fault) => ({ ...fault, path: rowPath(fault.path, form) })),
  };
}

/** A receipt or quote with the prices and lots its lines are kept as; then its page. */
export async function keepBillForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("keepBillForm", previous, form);
  if (held !== null) return held;
  const input = typedBill(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      const id = typed(form, "id") ?? "";
      return atRows(await writeChecked(billEntry, input, (entry) => addBill(scope, id, entry)), form);
    },
    (bill) => `/bills/${bill.id}?done=kept`,
  );
}

/** Takes a bill back with what it made; can be brought back. */
export async function undoBillForm(form: FormData): Promise<void> {
  await allowed("undoBillForm");
  const id = typed(form, "id") ?? "";
  await undoBill(await scopeSeen(), id);
  redirect(`/bills/${id}?done=undone`);
}

/** Brings a bill back with what was undone with it. */
export async function redoBillForm(form: FormData): Promise<void> {
  await allowed("redoBillForm");
  const id = typed(form, "id") ?? "";
  const written = await redoBill(await scopeSeen(), id);
  redirect(`/bills/${id}?done=${written.ok ? "redone" : "not-redone"}`);
}
