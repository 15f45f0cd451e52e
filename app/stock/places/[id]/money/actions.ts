"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { chargePlace } from "../../../../../lib/data/stock-place-acts.ts";
import { placeMoneyEntry } from "../../../../../lib/stock/stock-act-entry.ts";
import { answer, refused, writeChecked } from "../../../../_forms/answer.ts";
import { fieldNames } from "../../../../_forms/field-names.ts";
import { typed, typedAmount } from "../../../../_forms/typed.ts";
import { heldBack } from "../../../../_gate/allowed.ts";
import type { FormState } from "../../../../_ui/form-state.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";

async function names() {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  return fieldNames({
    amount: t("money.amount"),
    currency: stock("currency"),
    from: t("money.from"),
    until: t("money.until"),
    shareBy: t("money.shareBy"),
    reason: stock("reason"),
  });
}

function input(form: FormData, locale: string) {
  return {
    amount: typedAmount(form, "amount", locale),
    currency: typed(form, "currency"),
    from: typed(form, "from"),
    until: typed(form, "until"),
    shareBy: typed(form, "shareBy"),
    reason: typed(form, "reason") ?? null,
  };
}

/** What the place cost, checked and shown share by share; nothing is booked yet. */
export async function previewMoney(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("previewMoney", previous, form);
  if (held !== null) return held;
  const placeId = typed(form, "ofPlace") ?? "";
  const now = await today();
  return answer(
    previous,
    form,
    await names(),
    async () =>
      writeChecked(placeMoneyEntry, input(form, await getLocale()), async (entry) =>
        entry.until > now
          ? refused({ path: "until", code: "day-ahead" })
          : { ok: true as const, value: entry, repeated: false },
      ),
    ({ amount, currency, from, until, shareBy, reason }) => {
      const asked = { amount: amount.toFixed(), currency, from, until, shareBy, reason: reason ?? "" };
      return `/stock/places/${placeId}/money?${new URLSearchParams(asked)}#shares`;
    },
  );
}

/** Books the shares, as one. */
export async function bookMoney(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("bookMoney", previous, form);
  if (held !== null) return held;
  const placeId = typed(form, "ofPlace") ?? "";
  const locale = await getLocale();
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(placeMoneyEntry, input(form, locale), (entry) =>
        chargePlace(scope, placeId, typed(form, "id") ?? "", entry),
      );
    },
    ({ id }) => `/stock/places/${placeId}?done=act&act=${id}`,
  );
}
