import { getLocale, getTranslations } from "next-intl/server";
import { wantedPrice } from "../../../lib/data/reminder-wishes.ts";
import type { Material } from "../../../lib/materials/material.ts";
import { recheckDays } from "../../../lib/prices/seen-day.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import { fingerprint } from "../../_forms/fingerprint.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { Notice } from "../../_ui/notice.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { unitWords } from "../../_words/unit-words.ts";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { tellMeAsBefore, tellMeForm } from "./tell-me-actions.ts";

/** After the price to be told at was set: says so, and offers to take it back. */
export async function ToldDone({ query, materialId }: Readonly<{ query: Query; materialId: string }>) {
  const t = await getTranslations("reminders.tellMe");
  const ui = await getTranslations("ui");
  const [told, was] = [await asked(query, "told"), await asked(query, "was")];
  if (told === undefined) return null;
  const fields = { materialId, amount: was === undefined || was === "off" ? "" : was };
  return (
    <UndoBar undo={{ action: tellMeAsBefore, fields, label: ui("undo") }}>
      {told === "off" ? t("off") : t("told", { amount: told })}
    </UndoBar>
  );
}

/** At what price the person wants to be told of a material, and when it is time to look at its prices again. */
export async function TellMe({
  material,
  valuation,
}: Readonly<{ material: Material; valuation: Valuation }>) {
  const t = await getTranslations("reminders.tellMe");
  const ui = await getTranslations("ui");
  const units = await unitWords();
  const wanted = await wantedPrice(await scopeSeen(), material.id);
  const { homeCurrency: currency } = valuation;
  return (
    <Part title={t("title")} note={t("note")} id="tell-me">
      {wanted !== null && wanted.currency !== currency ? (
        <Notice tone="warn">{t("other", { currency: wanted.currency })}</Notice>
      ) : null}
      <Form action={tellMeForm} seen={fingerprint(wanted)} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="materialId" value={material.id} />
        <AmountField
          name="amount"
          label={t("amount", { unit: units.one(material.purchaseUnit) })}
          hint={t("hint", { currency })}
          start={wanted?.amount.toFixed() ?? ""}
          locale={await getLocale()}
          words={await amountWords()}
          beside={currency}
        />
        <Button kind="plain" pending={ui("saving")}>
          {t("save")}
        </Button>
      </Form>
      <p>{t("recheck", { days: recheckDays(material, valuation) })}</p>
    </Part>
  );
}
