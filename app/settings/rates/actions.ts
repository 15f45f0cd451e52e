"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { addExchangeRate, changeExchangeRate, exchangeRates } from "../../../lib/data/exchange-rates.ts";
import { exchangeRateEntry } from "../../../lib/rates/exchange-rate-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed, typedAmount } from "../../_forms/typed.ts";
import { heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { findRate } from "./find-rate.ts";

async function names() {
  const t = await getTranslations("settings.rates");
  return fieldNames({
    date: t("date"),
    base: t("base"),
    quote: t("quote"),
    rate: t("rate"),
    source: t("source"),
  });
}

async function rateTyped(form: FormData) {
  return {
    date: typed(form, "date") ?? "",
    base: typed(form, "base") ?? "",
    quote: typed(form, "quote") ?? "",
    rate: typedAmount(form, "rate", await getLocale()) ?? "",
    source: typed(form, "source") ?? "",
  };
}

/** Adds one published rate. Another rate of the same day, pair and source is never written over unasked. */
export async function addRateForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addRateForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("settings.rates");
  const input = await rateTyped(form);
  return answer(
    previous,
    form,
    await names(),
    () => writeChecked(exchangeRateEntry, input, async (entry) => addExchangeRate(await scopeSeen(), entry)),
    () => "/settings/rates?done=rate-added",
    { conflict: t("there") },
  );
}

/** Puts a rate right that was typed wrong; the change log keeps the earlier one. */
export async function correctRateForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("correctRateForm", previous, form);
  if (held !== null) return held;
  const input = await rateTyped(form);
  return answer(
    previous,
    form,
    await names(),
    () =>
      writeChecked(exchangeRateEntry, input, async (entry) => changeExchangeRate(await scopeSeen(), entry)),
    () => "/settings/rates?done=rate-corrected",
    { now: async () => findRate(await exchangeRates(await scopeSeen()), input) },
  );
}
