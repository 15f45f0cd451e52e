"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { isLocalDate } from "../../../lib/calendar/local-date.ts";
import { confirmTax, saveTaxRegion, taxRegions } from "../../../lib/data/tax-regions.ts";
import { taxRegionEntry } from "../../../lib/tax/tax-region-entry.ts";
import { answer, refused, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { rowsTyped, typed, typedAmount, typedOrNull } from "../../_forms/typed.ts";
import { allowed, heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

function componentsTyped(form: FormData, locale: string) {
  return rowsTyped(form, "components")
    .map((row) => `components.${row}`)
    .filter((at) =>
      ["name", "ratePercent", "from"].some((name) => typed(form, `${at}.${name}`) !== undefined),
    )
    .map((at) => ({
      name: typed(form, `${at}.name`) ?? "",
      ratePercent: typedAmount(form, `${at}.ratePercent`, locale) ?? "",
      from: typed(form, `${at}.from`) ?? "",
      until: typedOrNull(form, `${at}.until`),
      base: typed(form, `${at}.base`) ?? "price",
      recoverable: typed(form, `${at}.recoverable`) === "yes",
      evidence: typed(form, `${at}.evidence`),
    }));
}

/** Saves a region of the workspace's own, or its own reading of a known one. */
export async function saveTaxRegionForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("saveTaxRegionForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("settings.taxes");
  const s = await getTranslations("settings");
  const input = {
    code: typed(form, "code") ?? "",
    name: typed(form, "name"),
    completeFrom: typed(form, "completeFrom"),
    components: componentsTyped(form, await getLocale()),
  };
  const names = fieldNames({
    code: t("code"),
    name: t("name"),
    completeFrom: t("completeFrom"),
    "components name": t("component"),
    "components ratePercent": t("rate"),
    "components from": s("from"),
    "components until": s("until"),
    "components evidence": t("evidence"),
  });
  return answer(
    previous,
    form,
    names,
    () =>
      writeChecked(taxRegionEntry, input, async (entry) => {
        const scope = await scopeSeen();
        const known = (await taxRegions(scope)).some(({ code }) => code === entry.code);
        // A new region never takes the place of one that is there; changing that one starts from its own page.
        if (known && !form.has("seen")) return refused({ path: "code", code: "name-taken" });
        return saveTaxRegion(scope, entry);
      }),
    () => "/settings/taxes?done=region-saved",
    {
      now: async () => (await taxRegions(await scopeSeen())).find(({ code }) => code === input.code) ?? null,
    },
  );
}

/** The user looked up a rate written from memory and found it right. */
export async function confirmTaxForm(form: FormData): Promise<void> {
  await allowed("confirmTaxForm");
  const code = typed(form, "code") ?? "";
  const from = typed(form, "from");
  if (isLocalDate(from)) await confirmTax(await scopeSeen(), code, typed(form, "component") ?? "", from);
  redirect(`/settings/taxes/${encodeURIComponent(code)}?done=region-confirmed`);
}
