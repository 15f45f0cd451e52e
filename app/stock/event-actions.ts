"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addStockEvent, redoStockEvent, undoStockEvent } from "../../lib/data/stock-events.ts";
import type { Written } from "../../lib/fault.ts";
import type { StockEvent } from "../../lib/stock/lot.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { typedEvent } from "./event-typed.ts";
import { afterRefusal } from "./undo-refused.ts";

const AMOUNTS = { returned: "refund", sold: "proceeds", moved: "moveCost", stored: "storing" } as const;
const MANY = {
  returned: "return.many",
  sold: "sell.many",
  "written-off": "writeOff.many",
  moved: "move.many",
} as const;

/** What the fields of an event's form are called, by its kind. */
async function namesFor(kind: string) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  const amount = kind in AMOUNTS ? life(AMOUNTS[kind as keyof typeof AMOUNTS]) : t("amount");
  const many = kind in MANY ? life(MANY[kind as keyof typeof MANY]) : t("howMany");
  return fieldNames({
    quantity: many,
    on: t("on"),
    requirementId: t("requirement"),
    reason: t("reason"),
    amount,
    currency: t("currency"),
    "cost amount": amount,
    placeId: kind === "moved" ? life("move.to") : life("takenFrom"),
    fromPlaceId: life("move.from"),
  });
}

/** A cost stands under `cost` in the entry and under `amount` in the form. */
function inForm(state: FormState): FormState {
  const faults = state.faults.map((fault) => ({ ...fault, path: fault.path.replace(/^cost\./, "") }));
  return { ...state, faults };
}

/** One thing to happen to a lot: set aside, used, moved, returned, sold, written off, stored at a cost; the kind stands in the form. */
export async function eventForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("eventForm", previous, form);
  if (held !== null) return held;
  const lotId = typed(form, "lotId") ?? "";
  const input = typedEvent(form, await getLocale());
  const state = await answer(
    previous,
    form,
    await namesFor(typed(form, "kind") ?? ""),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(stockEventEntry, input, (entry) =>
        addStockEvent(scope, lotId, typed(form, "id") ?? "", entry),
      );
    },
    (event) => `/stock/${lotId}?done=event&event=${event.id}`,
  );
  return inForm(state);
}

/** Where a page goes after an event was taken back or brought back, or could not be: the event in the way is named. */
function after(lotId: string, written: Written<StockEvent>, done: string): string {
  if (written.ok) return `/stock/${lotId}?done=${done}&event=${written.value.id}`;
  return `/stock/${lotId}?${afterRefusal(written)}`;
}

/** Sets free what is set aside for one need, all of it. Sent twice, it is done once. */
export async function setFree(form: FormData): Promise<void> {
  await allowed("setFree");
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

/** Takes something that happened to a lot back, with all that was done together with it. */
export async function undoEvent(form: FormData): Promise<void> {
  await allowed("undoEvent");
  const written = await undoStockEvent(await scopeSeen(), typed(form, "id") ?? "");
  redirect(after(typed(form, "lotId") ?? "", written, "undone"));
}

/** Lets it have happened again. */
export async function redoEvent(form: FormData): Promise<void> {
  await allowed("redoEvent");
  const written = await redoStockEvent(await scopeSeen(), typed(form, "id") ?? "");
  redirect(after(typed(form, "lotId") ?? "", written, "event"));
}
