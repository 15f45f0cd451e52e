import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { exchangeRates } from "../../../lib/data/exchange-rates.ts";
import { taxRegions } from "../../../lib/data/tax-regions.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { percentText } from "../../../lib/show/percent-text.ts";
import { fingerprint } from "../../_forms/fingerprint.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { RowFields, Rows, rowKey } from "../../_ui/rows.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { currencyChoices } from "../../_words/currency-choices.ts";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { saveWorkspace } from "./actions.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.workspace"))("title") };
}

/** The workspace: currency, tax, registrations, money rate, recheck days, time zone, sources of rates. */
export default async function WorkspacePage() {
  const t = await getTranslations("settings.workspace");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const workspace = await workspaceSeen();
  const scope = await scopeSeen();
  const [regions, rates] = await Promise.all([taxRegions(scope), exchangeRates(scope)]);
  const moneyRate = workspace.moneyRates.at(-1)?.percent.toFixed() ?? "";
  const soFar = workspace.moneyRates.map(({ percent, from }) =>
    from === null
      ? t("moneyRateAlways", { percent: percentText(percent, locale) })
      : t("moneyRateSince", { percent: percentText(percent, locale), day: dayText(from, locale) }),
  );
  const rows = [...workspace.registrations, null];
  const foreign = [...new Set(rates.flatMap((rate) => [rate.base, rate.quote]))]
    .filter((code) => code !== workspace.homeCurrency)
    .sort();
  const sources = [...new Set(rates.map((rate) => rate.source))].sort();
  return (
    <>
      <PageHead title={t("title")} up={<Link href="/settings">{s("back")}</Link>} />
      <Form action={saveWorkspace} seen={fingerprint(workspace)} faultsTitle={ui("faultsTitle")}>
        <Field name="name" label={t("name")} start={workspace.name} required />
        <ChoiceField
          name="homeCurrency"
          label={t("homeCurrency")}
          hint={t("homeCurrencyHint")}
          start={workspace.homeCurrency}
          choices={currencyChoices(locale, ["CAD", "USD"])}
        />
        <ChoiceField
          name="taxRegion"
          label={t("taxRegion")}
          hint={t("taxRegionHint")}
          start={workspace.taxRegion}
          choices={regions.map((region) => ({
            value: region.code,
            label: `${region.name} (${region.code})`,
          }))}
        />
        <Rows title={t("registrations")} hint={t("registrationsHint")}>
          {rows.map((registration, index) => (
            <RowFields key={rowKey(index)} label={t("registrationRow", { number: index + 1 })}>
              <Field name={`registeredFor.${index}.tax`} label={t("tax")} start={registration?.tax ?? ""} />
              <DayField
                name={`registeredFor.${index}.from`}
                label={s("from")}
                start={registration?.from ?? ""}
              />
              <DayField
                name={`registeredFor.${index}.until`}
                label={s("until")}
                start={registration?.until ?? ""}
              />
            </RowFields>
          ))}
        </Rows>
        <input type="hidden" name="moneyRateBefore" value={moneyRate} />
        <AmountField
          name="moneyRate.percent"
          label={t("moneyRate")}
          hint={`${t("moneyRateHint")} ${soFar.length > 0 ? t("moneyRatesSoFar", { rates: soFar.join(", ") }) : ""}`}
          start={moneyRate}
          locale={locale}
          words={await amountWords()}
          beside="%"
        />
        <DayField name="moneyRate.from" label={t("moneyRateFrom")} hint={t("moneyRateFromHint")} />
        <Field
          name="recheckDays"
          label={t("recheckDays")}
          hint={t("recheckDaysHint")}
          start={String(workspace.recheckDays)}
          inputMode="numeric"
        />
        <ChoiceField
          name="timeZone"
          label={t("timeZone")}
          hint={t("timeZoneHint")}
          start={workspace.timeZone}
          choices={[...new Set([workspace.timeZone, "UTC", ...Intl.supportedValuesOf("timeZone")])]
            .sort()
            .map((zone) => ({ value: zone, label: zone.replaceAll("_", " ") }))}
        />
        {foreign.map((code) => (
          <ChoiceField
            key={code}
            name={`rateSources.${code}`}
            label={t("rateSource", { currency: code })}
            start={workspace.rateSources[code] ?? ""}
            choices={[
              { value: "", label: t("rateSourceAny") },
              ...sources.map((source) => ({ value: source, label: source })),
            ]}
          />
        ))}
        <Button pending={ui("saving")}>{ui("save")}</Button>
      </Form>
    </>
  );
}
