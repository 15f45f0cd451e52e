import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { savingsFactsOfLot } from "../../../lib/data/savings-facts.ts";
import { lotOfRowKey } from "../../../lib/savings/row-key.ts";
import { whySaving } from "../../../lib/savings/why-saving.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { savingsAsked, savingsQuery } from "../../../lib/show/savings-asked.ts";
import { gainText } from "../../../lib/show/savings-rows.ts";
import { Notice } from "../../_ui/notice.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { dayAsked, type Query } from "../../_workspace/day-asked.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { valuesOf } from "../_report/content-asked.ts";
import { Going } from "./going.tsx";
import { Missing } from "./missing.tsx";
import { StrictOffers } from "./offers.tsx";
import { LotBehind } from "./receipt.tsx";
import { Steps } from "./steps.tsx";

export const dynamic = "force-dynamic";

type WhyProps = Readonly<{ params: Promise<Readonly<{ row: string }>>; searchParams: Query }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("savingWhy"))("title") };
}

/** Why one saving is what it is: the sum, the prices behind it, the lot and its receipt, and what would make the rest known. */
export default async function WhyPage({ params, searchParams }: WhyProps) {
  const t = await getTranslations("savingWhy");
  const s = await getTranslations("savings");
  const locale = await getLocale();
  const units = await unitWords();
  const key = decodeURIComponent((await params).row);
  const lotId = lotOfRowKey(key);
  if (!isId(lotId)) notFound();
  const { day, today } = await dayAsked(searchParams);
  const facts = await savingsFactsOfLot(await scopeSeen(), lotId, day);
  const why = whySaving(key, day, facts);
  const query = savingsQuery(savingsAsked(await valuesOf(searchParams)), day === today ? null : day);
  const up = <Link href={`/savings${query}`}>{t("back")}</Link>;
  const material = facts.materials.get(why?.row.materialId ?? "");
  if (why === null || material === undefined)
    return <PageHead up={up} title={t("title")} answer={t("rowGone")} />;
  const { row } = why;
  const names = namesOf(facts);
  const currency = facts.valuation.homeCurrency;
  const unit = material.purchaseUnit;
  const quantity = countText(row.quantity, locale);
  const what = {
    quantity: quantity.text,
    unit: units.of(unit, quantity.exact),
    kind: row.missing ? s("missedAtCount") : s(`kinds.${row.kind}`),
    on: row.on === null ? "none" : "yes",
    day: row.on === null ? "" : dayText(row.on, locale),
    b: said,
  };
  const gain = row.saving === null ? null : gainText(row.saving, locale);
  const marked = dayText(row.on ?? day, locale);
  return (
    <>
      <PageHead
        up={up}
        title={material.name}
        answer={
          gain === null
            ? t.rich("answerNotKnown", what)
            : t.rich("answer", { ...what, figure: gain.figure, side: gain.side })
        }
      />
      <Missing missing={why.makesKnown} materialId={material.id} material={material.name} lotId={lotId} />
      <Steps why={why} currency={currency} />
      {row.interpolated ? (
        <Notice tone="plain">
          <p>{t("interpolated")}</p>
        </Notice>
      ) : null}
      {why.use === null ? null : (
        <Going
          title={t("goingUse", { day: marked })}
          why={why.use}
          names={names}
          unit={units.one(unit)}
          currency={currency}
        />
      )}
      {why.acquisition === null ? null : (
        <Going
          title={t("goingBought", { day: dayText(row.acquiredOn, locale) })}
          why={why.acquisition}
          names={names}
          unit={units.one(unit)}
          currency={currency}
        />
      )}
      {why.use === null ? null : (
        <StrictOffers
          cover={why.cover}
          title={t("strictTitle", { day: marked })}
          unit={(count) => units.of(unit, count)}
          names={names}
          currency={currency}
        />
      )}
      <LotBehind why={why} valuation={facts.valuation} unit={unit} units={units} names={names} />
    </>
  );
}
