import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { exchangeRates } from "../../../lib/data/exchange-rates.ts";
import { rateRows } from "../../../lib/show/rate-rows.ts";
import { Age } from "../../_ui/age.tsx";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { ChoiceField } from "../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../_ui/field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { currencyChoices } from "../../_words/currency-choices.ts";
import { scopeSeen, today, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { Done } from "../done.tsx";
import { addRateForm } from "./actions.ts";

export const dynamic = "force-dynamic";
const SHOWN = 100;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.rates"))("title") };
}

/** Exchange rates entered so far, and a form for one more. */
export default async function RatesPage({ searchParams }: PageProps<"/settings/rates">) {
  const t = await getTranslations("settings.rates");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const { done } = await searchParams;
  const { homeCurrency } = await workspaceSeen();
  const day = await today();
  const rows = rateRows(await exchangeRates(await scopeSeen()), day, locale);
  const newest = rows[0];
  return (
    <>
      <Done code={done} />
      <PageHead
        title={t("title")}
        answer={t("answer", {
          count: rows.length,
          pair: newest?.pair ?? "",
          rate: newest?.rate ?? "",
          age: ui("age", { days: newest?.ageDays ?? 0 }),
        })}
        up={<Link href="/settings">{s("back")}</Link>}
      />
      <Part title={t("add")} note={t("why", { home: homeCurrency })}>
        <Form action={addRateForm} faultsTitle={ui("faultsTitle")}>
          <DayField name="date" label={t("date")} start={day} />
          <ChoiceField
            name="base"
            label={t("base")}
            start={homeCurrency === "USD" ? "CAD" : "USD"}
            choices={currencyChoices(locale, ["USD", "CAD"])}
          />
          <ChoiceField
            name="quote"
            label={t("quote")}
            start={homeCurrency}
            choices={currencyChoices(locale, [homeCurrency])}
          />
          <AmountField name="rate" label={t("rate")} locale={locale} words={await amountWords()} required />
          <Field name="source" label={t("source")} hint={t("sourceHint")} start={newest?.source} required />
          <Button pending={ui("saving")}>{t("save")}</Button>
        </Form>
      </Part>
      {rows.length > 0 ? (
        <Part title={t("list")}>
          <Table
            caption={t("list")}
            captionHidden
            columns={[
              { key: "pair", label: t("pair") },
              { key: "rate", label: t("rate"), figures: true },
              { key: "day", label: t("date") },
              { key: "age", label: t("age") },
              { key: "source", label: t("source") },
            ]}
            rows={rows.slice(0, SHOWN).map((row) => ({
              key: row.key,
              cells: [row.pair, row.rate, row.day, <Age key="age" days={row.ageDays} />, row.source],
            }))}
          />
        </Part>
      ) : null}
    </>
  );
}
