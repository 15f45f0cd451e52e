"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { addExchangeRate } from "../../../lib/data/exchange-rates.ts";
import { exchangeRateEntry } from "../../../lib/rates/exchange-rate-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed, typedAmount } from "../../_forms/typed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** Adds one published rate. */
export async function addRateForm(previous: FormState, form: FormData): Promise<FormState> {
  const t = await getTranslations("settings.rates");
  const input = {
    date: typed(form, "date") ?? "",
    base: typed(form, "base") ?? "",
    quote: typed(form, "quote") ?? "",
    rate: typedAmount(form, "rate", await getLocale()) ?? "",
    source: typed(form, "source") ?? "",
  };
  const names = fieldNames({
    date: t("date"),
    base: t("base"),
    quote: t("quote"),
    rate: t("rate"),
    source: t("source"),
  });
  return answer(
    previous,
    form,
    names,
    () => writeChecked(exchangeRateEntry, input, async (entry) => addExchangeRate(await scopeSeen(), entry)),
    () => "/settings/rates?done=rate-added",
  );
}
