"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addAskingPrice, undoAskingPrice } from "../../../lib/data/asking-prices.ts";
import { addStockEvent } from "../../../lib/data/stock-events.ts";
import { askingPriceEntry } from "../../../lib/stock/asking-price-entry.ts";
import { stockEventEntry } from "../../../lib/stock/stock-event-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed, typedAmount } from "../../_forms/typed.ts";
import { allowed, heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** What is asked for one of a lot from a day on. */
export async function askForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("askForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("salvage");
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    amount: typedAmount(form, "amount", await getLocale()),
    currency: typed(form, "currency"),
    since: typed(form, "since"),
  };
  return answer(
    previous,
    form,
    fieldNames({ amount: t("askEach"), since: t("since") }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(askingPriceEntry, input, (entry) =>
        addAskingPrice(scope, lotId, typed(form, "id") ?? "", entry),
      );
    },
    (asked) => `/stock/${lotId}?done=asked&asked=${asked.id}`,
  );
}

/** No longer for sale, from the day of the page on. Sent twice, it is done once. */
export async function withdraw(form: FormData): Promise<void> {
  await allowed("withdraw");
  const lotId = typed(form, "lotId") ?? "";
  const input = { amount: null, currency: typed(form, "currency"), since: typed(form, "since") };
  const scope = await scopeSeen();
  const written = await writeChecked(askingPriceEntry, input, (entry) =>
    addAskingPrice(scope, lotId, typed(form, "id") ?? "", entry),
  );
  redirect(`/stock/${lotId}${written.ok ? `?done=withdrawn&asked=${written.value.id}` : ""}`);
}

/** Takes an asking price, or its end, back. */
export async function undoAsked(form: FormData): Promise<void> {
  await allowed("undoAsked");
  await undoAskingPrice(await scopeSeen(), typed(form, "id") ?? "");
  redirect(`/stock/${typed(form, "lotId") ?? ""}?done=asked-undone`);
}

/** Some of a lot sold for so much in all. */
export async function sellForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("sellForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("salvage");
  const locale = await getLocale();
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    kind: "sold",
    quantity: typedAmount(form, "quantity", locale),
    amount: typedAmount(form, "amount", locale),
    currency: typed(form, "currency"),
    on: typed(form, "on"),
  };
  return answer(
    previous,
    form,
    fieldNames({ quantity: t("sellMany"), amount: t("sellAmount"), on: t("sellOn") }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(stockEventEntry, input, (entry) =>
        addStockEvent(scope, lotId, typed(form, "id") ?? "", entry),
      );
    },
    (event) => `/stock/${lotId}?done=event&event=${event.id}`,
  );
}
