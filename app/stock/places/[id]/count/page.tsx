import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { isLocalDate } from "../../../../../lib/calendar/local-date.ts";
import { lotsOf } from "../../../../../lib/data/lots.ts";
import { contentsOfPlace } from "../../../../../lib/data/place-contents.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import { quantityText } from "../../../../../lib/show/money-text.ts";
import { placeCount } from "../../../../../lib/show/place-count.ts";
import { AmountField } from "../../../../_ui/amount-field.client.tsx";
import { Button } from "../../../../_ui/button.client.tsx";
import { DayField, Field } from "../../../../_ui/field.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { PageHead } from "../../../../_ui/page-head.tsx";
import { RowFields, Rows } from "../../../../_ui/rows.tsx";
import { amountWords } from "../../../../_words/amount-words.ts";
import { unitWords } from "../../../../_words/unit-words.ts";
import { asked, type Query } from "../../../../_workspace/day-asked.ts";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";
import { previewCount } from "./actions.ts";
import { askedCounts } from "./asked-count.ts";
import { Differences } from "./differences.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("places"))("count.title") };
}

/** A stock-take of a place: every lot that lies there, what was counted, and the differences before they are booked. */
export default async function CountPlacePage({ params, searchParams }: Props) {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  const words = await amountWords();
  const scope = await scopeSeen();
  const now = await today();
  const wished = await asked(searchParams, "on");
  const on = isLocalDate(wished) && wished <= now ? wished : now;
  const [contents, lots] = await Promise.all([
    contentsOfPlace(scope, idAsked((await params).id), on),
    lotsOf(scope),
  ]);
  if (contents === null) notFound();
  const { place, loads } = contents;
  const orderedOn = new Map(lots.map((lot) => [lot.id, lot.orderedOn]));
  const counted = await askedCounts(
    searchParams,
    loads.map(({ lotId }) => lotId),
  );
  const reason = (await asked(searchParams, "reason")) ?? "";
  return (
    <>
      <PageHead
        title={t("count.title")}
        up={<Link href={`/stock/places/${place.id}`}>{place.name}</Link>}
        answer={loads.length === 0 ? t("count.nothing") : t("count.note")}
      />
      {counted.size === 0 ? null : (
        <Differences
          placeId={place.id}
          count={placeCount(loads, counted, locale)}
          counted={counted}
          materialOf={new Map(loads.map(({ lotId, material }) => [lotId, material]))}
          on={on}
          reason={reason}
        />
      )}
      {loads.length === 0 ? null : (
        <Form key={[...counted].join()} action={previewCount} faultsTitle={t("count.faults")}>
          <input type="hidden" name="ofPlace" value={place.id} />
          <Rows title={t("count.counted")} hint={t("count.countedHint")}>
            {loads.map(({ lotId, material, quantity }, row) => {
              const from = orderedOn.get(lotId);
              const of = { material: material.name, day: from === undefined ? "" : dayText(from, locale) };
              return (
                <RowFields key={lotId} label={t("count.lot", of)}>
                  <input type="hidden" name={`counts.${row}.lotId`} value={lotId} />
                  <input type="hidden" name={`counts.${row}.name`} value={material.name} />
                  <AmountField
                    name={`counts.${row}.quantity`}
                    label={t("count.lot", of)}
                    hint={t("count.bookedHint", { quantity: quantityText(quantity, locale) })}
                    start={counted.get(lotId) ?? ""}
                    beside={units.of(material.purchaseUnit, "2")}
                    locale={locale}
                    words={words}
                  />
                </RowFields>
              );
            })}
          </Rows>
          <DayField name="on" label={t("count.on")} hint={t("count.onHint")} start={on} />
          <Field name="reason" label={stock("reason")} start={reason} />
          <Button kind={counted.size === 0 ? "main" : "plain"}>{t("count.show")}</Button>
        </Form>
      )}
    </>
  );
}
