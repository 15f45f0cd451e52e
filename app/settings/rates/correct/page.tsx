import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { exchangeRates } from "../../../../lib/data/exchange-rates.ts";
import { dayText } from "../../../../lib/show/day-text.ts";
import { fingerprint } from "../../../_forms/fingerprint.ts";
import { AmountField } from "../../../_ui/amount-field.client.tsx";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { amountWords } from "../../../_words/amount-words.ts";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { correctRateForm } from "../actions.ts";
import { findRate } from "../find-rate.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.rates"))("correct") };
}

/** A rate that was typed wrong, put right. Day, pair and source name it; another of these is another rate. */
export default async function CorrectRatePage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("settings.rates");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const named = {
    date: (await asked(searchParams, "date")) ?? "",
    base: (await asked(searchParams, "base")) ?? "",
    quote: (await asked(searchParams, "quote")) ?? "",
    source: (await asked(searchParams, "source")) ?? "",
  };
  const rate = findRate(await exchangeRates(await scopeSeen()), named);
  if (rate === null) notFound();
  return (
    <>
      <PageHead
        title={t("correct")}
        answer={t("correctAnswer", {
          pair: `${rate.base}/${rate.quote}`,
          day: dayText(rate.on, locale),
          source: rate.source,
        })}
        up={<Link href="/settings/rates">{t("title")}</Link>}
      />
      <Form action={correctRateForm} seen={fingerprint(rate)} faultsTitle={ui("faultsTitle")}>
        {Object.entries(named).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <AmountField
          name="rate"
          label={t("rate")}
          start={rate.rate.toFixed()}
          locale={locale}
          words={await amountWords()}
          required
        />
        <Button pending={ui("saving")}>{ui("save")}</Button>
      </Form>
    </>
  );
}
