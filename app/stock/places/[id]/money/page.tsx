import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { savingsFacts } from "../../../../../lib/data/facts.ts";
import { place as placeById } from "../../../../../lib/data/places.ts";
import { placeShares } from "../../../../../lib/show/place-shares.ts";
import { SPACE_MEASURES } from "../../../../../lib/stock/place.ts";
import { placeMoneyEntry } from "../../../../../lib/stock/stock-act-entry.ts";
import { AmountField } from "../../../../_ui/amount-field.client.tsx";
import { Button } from "../../../../_ui/button.client.tsx";
import { ChoiceField } from "../../../../_ui/choice-field.client.tsx";
import { DayField, Field } from "../../../../_ui/field.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { PageHead } from "../../../../_ui/page-head.tsx";
import { amountWords } from "../../../../_words/amount-words.ts";
import { currencyChoices } from "../../../../_words/currency-choices.ts";
import { asked, type Query } from "../../../../_workspace/day-asked.ts";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";
import { previewMoney } from "./actions.ts";
import { Shares } from "./shares.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("places"))("money.title") };
}

const FIELDS = ["amount", "currency", "from", "until", "shareBy", "reason"] as const;

/** What was asked for in the address, field by field; empty where nothing was. */
async function typedBefore(query: Query): Promise<Record<(typeof FIELDS)[number], string>> {
  const values = await Promise.all(
    FIELDS.map(async (field) => [field, (await asked(query, field)) ?? ""] as const),
  );
  return Object.fromEntries(values) as Record<(typeof FIELDS)[number], string>;
}

/** What a place cost over some days, shared over what lay there: the shares first, then booked as one. */
export default async function PlaceMoneyPage({ params, searchParams }: Props) {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const now = await today();
  const [place, facts, before] = await Promise.all([
    placeById(scope, id),
    savingsFacts(scope, null, now),
    typedBefore(searchParams),
  ]);
  if (place === null) notFound();
  const home = facts.valuation.homeCurrency;
  const entry = placeMoneyEntry.safeParse({ ...before, reason: before.reason || null });
  return (
    <>
      <PageHead
        title={t("money.title")}
        up={<Link href={`/stock/places/${id}`}>{place.name}</Link>}
        answer={t("money.note")}
      />
      {entry.success ? (
        <Shares
          placeId={id}
          shares={placeShares(id, facts, entry.data, locale)}
          materials={facts.materials}
          asked={before}
        />
      ) : null}
      <Form key={Object.values(before).join()} action={previewMoney} faultsTitle={t("money.faults")}>
        <input type="hidden" name="ofPlace" value={id} />
        <AmountField
          name="amount"
          label={t("money.amount")}
          hint={t("money.amountHint")}
          start={before.amount}
          locale={locale}
          words={await amountWords()}
          required
        />
        <ChoiceField
          name="currency"
          label={stock("currency")}
          choices={currencyChoices(locale, [home])}
          start={before.currency || home}
        />
        <DayField name="from" label={t("money.from")} start={before.from} />
        <DayField
          name="until"
          label={t("money.until")}
          hint={t("money.untilHint")}
          start={before.until || now}
        />
        <ChoiceField
          name="shareBy"
          label={t("money.shareBy")}
          choices={SPACE_MEASURES.map((measure) => ({ value: measure, label: t(`limits.${measure}`) }))}
          start={before.shareBy || "volume"}
        />
        <Field name="reason" label={stock("reason")} start={before.reason} />
        <Button kind={entry.success ? "plain" : "main"}>{t("money.show")}</Button>
      </Form>
    </>
  );
}
