"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addStockEvent, redoStockEvent, undoStockEvent } from "../../lib/data/stock-events.ts";
import type { Written } from "../../lib/fault.ts";
import type { StockEvent } from "../../lib/stock/lot.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAmount } from "../_forms/typed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

/** Sets some of a lot aside, sets it free, or uses it: the kind stands in the form. */
export async function eventForm(previous: FormState, form: FormData): Promise<FormState> {
  const t = await getTranslations("stock");
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    kind: typed(form, "kind"),
    quantity: typedAmount(form, "quantity", await getLocale()),
    on: typed(form, "on"),
    requirementId: typed(form, "requirementId"),
    reason: typed(form, "reason"),
  };
  return answer(
    previous,
    form,
    fieldNames({
      quantity: t("howMany"),
      on: t("on"),
      requirementId: t("requirement"),
      reason: t("reason"),
    }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(stockEventEntry, input, (entry) =>
        addStockEvent(scope, lotId, typed(form, "id") ?? "", entry),
      );
    },
    (event) => `/stock/${lotId}?done=event&event=${event.id}`,
  );
}

/** Where a page goes after an event was taken back or brought back, or could not be: the event in the way is named. */
function after(lotId: string, written: Written<StockEvent>, done: string): string {
  if (written.ok) return `/stock/${lotId}?done=${done}&event=${written.value.id}`;
  const values = written.why === "faults" ? (written.faults[0]?.values ?? {}) : {};
  const { kind = "", on = "", quantity = "" } = values;
  return `/stock/${lotId}?${new URLSearchParams({ done: "cannot", kind, on, quantity })}`;
}

/** Sets free what is set aside for one need, all of it. Sent twice, it is done once. */
export async function setFree(form: FormData): Promise<void> {
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    kind: "released",
    quantity: typed(form, "quantity"),
    on: typed(form, "on"),
    requirementId: typed(form, "requirementId"),
  };
  const scope = await scopeSeen();
  const written = await writeChecked(stockEventEntry, input, (entry) =>
    addStockEvent(scope, lotId, typed(form, "id") ?? "", entry),
  );
  redirect(after(lotId, written, "event"));
}

/** Takes something that happened to a lot back. */
export async function undoEvent(form: FormData): Promise<void> {
  const written = await undoStockEvent(await scopeSeen(), typed(form, "id") ?? "");
  redirect(after(typed(form, "lotId") ?? "", written, "undone"));
}

/** Lets it have happened again. */
export async function redoEvent(form: FormData): Promise<void> {
  const written = await redoStockEvent(await scopeSeen(), typed(form, "id") ?? "");
  redirect(after(typed(form, "lotId") ?? "", written, "event"));
}
