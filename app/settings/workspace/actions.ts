"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { updateWorkspace } from "../../../lib/data/workspaces.ts";
import { workspaceEntry } from "../../../lib/tax/workspace-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { rowsTyped, typed, typedAmount, typedOrNull } from "../../_forms/typed.ts";
import { heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";

function registrationsTyped(form: FormData) {
  return rowsTyped(form, "registeredFor").flatMap((row) => {
    const at = (name: string) => typedOrNull(form, `registeredFor.${row}.${name}`);
    const [tax, from, until] = [at("tax"), at("from"), at("until")];
    return tax === null && from === null && until === null ? [] : [{ tax: tax ?? "", from, until }];
  });
}

function rateSourcesTyped(form: FormData) {
  const chosen = [...form.keys()].filter((key) => key.startsWith("rateSources."));
  return Object.fromEntries(
    chosen.flatMap((key) => {
      const source = typed(form, key);
      return source === undefined ? [] : [[key.slice("rateSources.".length), source]];
    }),
  );
}

/** Saves the workspace's settings. A money rate left as it was is not written again. */
export async function saveWorkspace(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("saveWorkspace", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("settings.workspace");
  const s = await getTranslations("settings");
  const locale = await getLocale();
  const percent = typedAmount(form, "moneyRate.percent", locale);
  const from = typedOrNull(form, "moneyRate.from");
  const same = percent === typed(form, "moneyRateBefore") && from === null;
  const input = {
    name: typed(form, "name") ?? "",
    homeCurrency: typed(form, "homeCurrency"),
    taxRegion: typed(form, "taxRegion"),
    registeredFor: registrationsTyped(form),
    ...(same ? {} : { moneyRate: percent === undefined ? null : { percent, from } }),
    recheckDays: typed(form, "recheckDays") ?? "",
    timeZone: typed(form, "timeZone"),
    rateSources: rateSourcesTyped(form),
  };
  const names = fieldNames({
    name: t("name"),
    homeCurrency: t("homeCurrency"),
    taxRegion: t("taxRegion"),
    "registeredFor tax": t("tax"),
    "registeredFor from": s("from"),
    "registeredFor until": s("until"),
    "moneyRate percent": t("moneyRate"),
    "moneyRate from": t("moneyRateFrom"),
    recheckDays: t("recheckDays"),
    timeZone: t("timeZone"),
  });
  return answer(
    previous,
    form,
    names,
    () => writeChecked(workspaceEntry, input, async (patch) => updateWorkspace(await scopeSeen(), patch)),
    () => "/settings?done=saved",
    { now: workspaceSeen },
  );
}
