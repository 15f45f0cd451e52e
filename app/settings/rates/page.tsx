import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { exchangeRates } from "../../../lib/data/exchange-rates.ts";
import { takenFiles } from "../../../lib/data/taken-files.ts";
import { rateRows } from "../../../lib/show/rate-rows.ts";
import { Age } from "../../_ui/age.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { scopeSeen, today, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { Done } from "../done.tsx";
import { FilesList } from "../files/files-list.tsx";
import { addRateForm } from "./actions.ts";
import { RateFields } from "./rate-fields.tsx";
import { RatesFileForm } from "./rates-file-form.tsx";

export const dynamic = "force-dynamic";
const SHOWN = 60;

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
  const scope = await scopeSeen();
  const [rates, files] = await Promise.all([exchangeRates(scope), takenFiles(scope, "rates")]);
  const rows = rateRows(rates, day, locale);
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
          <RateFields day={day} home={homeCurrency} source={newest?.source} />
          <Button pending={ui("saving")}>{t("save")}</Button>
        </Form>
      </Part>
      <Part title={t("file.title")} note={t("file.why")}>
        <RatesFileForm
          home={homeCurrency}
          used={[...new Set(rates.flatMap(({ base, quote }) => [base, quote]))]}
        />
        <p>
          <Link href="/settings/workspace">{t("file.choose")}</Link>
        </p>
      </Part>
      <FilesList files={files} />
      {rows.length > 0 ? (
        <Part title={t("list")} note={t("listNote")}>
          <Table
            caption={t("list")}
            captionHidden
            cards
            dense
            columns={[
              { key: "day", label: t("date") },
              { key: "rate", label: t("rate"), figures: true },
              { key: "pair", label: t("pair") },
              { key: "age", label: t("age"), figures: true },
              { key: "source", label: t("source") },
            ]}
            rows={rows.slice(0, SHOWN).map((row) => ({
              key: row.key,
              cells: [
                <Link key="day" href={`/settings/rates/correct?${new URLSearchParams(row.named)}`}>
                  {row.day}
                </Link>,
                row.rate,
                row.pair,
                <Age key="age" days={row.ageDays} />,
                row.source,
              ],
            }))}
          />
        </Part>
      ) : null}
    </>
  );
}
