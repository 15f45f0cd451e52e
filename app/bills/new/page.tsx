import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { taxRoundings } from "../../../lib/data/bills.ts";
import { offerFacts } from "../../../lib/data/facts.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { aisleFacts } from "../../../lib/show/aisle-facts-of.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { currencyChoices } from "../../_words/currency-choices.ts";
import { unitChoices } from "../../_words/unit-words.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { keepBillForm } from "../actions.ts";
import { BillFields } from "../bill-fields.client.tsx";
import { billWords } from "../bill-words.ts";
import { lotChoices } from "../lot-choices.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("bills"))("newTitle") };
}

/** A new receipt or quote, with what it comes to while it is typed. */
export default async function NewBillPage() {
  const t = await getTranslations("bills");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const day = await today();
  const found = await offerFacts(scope, day);
  const facts = aisleFacts(found, exposure(day, found), { everyRegion: true });
  const up = <Link href="/bills">{t("up")}</Link>;
  if (facts.stores.length === 0)
    return (
      <>
        <PageHead title={t("newTitle")} up={up} />
        <EmptyState
          title={t("noStoresTitle")}
          action={
            <LinkButton kind="main" href="/settings/stores/new">
              {t("addStore")}
            </LinkButton>
          }
        >
          {t("noStoresText")}
        </EmptyState>
      </>
    );
  const regions = [...found.valuation.regions.values()]
    .map(({ code, name }) => ({ value: code, label: name }))
    .sort((a, b) => a.label.localeCompare(b.label));
  const currencies = [facts.homeCurrency, ...facts.stores.map(({ currency }) => currency)];
  return (
    <>
      <PageHead title={t("newTitle")} up={up} answer={t("newNote")} />
      <Form action={keepBillForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <BillFields
          facts={facts}
          roundings={Object.fromEntries(await taxRoundings(scope))}
          currencies={currencyChoices(locale, currencies)}
          units={await unitChoices()}
          regions={regions}
          lots={await lotChoices(scope, day)}
          words={await billWords(facts.homeCurrency)}
          amountWords={await amountWords()}
          locale={locale}
          startStore={facts.stores.length === 1 ? (facts.stores[0]?.id ?? "") : ""}
        />
        <Button pending={t("saving")}>{t("save")}</Button>
      </Form>
    </>
  );
}
