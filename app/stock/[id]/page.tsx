import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../../lib/data/facts.ts";
import { lot as lotById } from "../../../lib/data/lots.ts";
import { eventsOf } from "../../../lib/data/stock-events.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { lotLife } from "../../../lib/show/lot-life.ts";
import { lotMore } from "../../../lib/show/lot-more.ts";
import { lotsOnDay, lotText } from "../../../lib/show/lot-text.ts";
import { needsOf } from "../../../lib/show/needs-of.ts";
import { DaySwitch } from "../../_ui/day-switch.tsx";
import { Caution } from "../../_ui/notice.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { dayAsked, type Query } from "../../_workspace/day-asked.ts";
import { idAsked } from "../../_workspace/id-asked.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { cautionsOf } from "../cautions.ts";
import { allPlaces } from "../place-choices.ts";
import { SalePart } from "../salvage/sale-part.tsx";
import { SalvageDone } from "../salvage/salvage-done.tsx";
import { SalvagePart } from "../salvage/salvage-part.tsx";
import { MoreWithLot } from "./_more/more-with-lot.tsx";
import { PayForm } from "./_more/pay-form.tsx";
import { Changes } from "./changes.tsx";
import { DeleteLot } from "./delete-lot.tsx";
import { DeletedLot } from "./deleted-lot.tsx";
import { Done } from "./done.tsx";
import { Events } from "./events.tsx";
import { LotAnswer } from "./lot-answer.tsx";
import type { LotContext } from "./lot-context.ts";
import { LotFacts } from "./lot-facts.tsx";
import { MoveForm } from "./move-form.tsx";
import { PriceFellNotice } from "./price-fell.tsx";
import { Receipt } from "./receipt.tsx";
import { ReceiveForm } from "./receive-form.tsx";
import { TakeForms } from "./take-forms.tsx";
import { Whereabouts } from "./whereabouts.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("stock"))("lotTitle") };
}

/** A lot on a day: how much of it is there and where, what there is to do with it, what happened to it, what it cost. */
export default async function LotPage({ params, searchParams }: Props) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  const words = await getTranslations("today");
  const locale = await getLocale();
  const { day, today } = await dayAsked(searchParams);
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const [stored, facts, events, places] = await Promise.all([
    lotById(scope, id),
    exposureFacts(scope, day),
    eventsOf(scope, id, { includeUndone: true }),
    allPlaces(scope),
  ]);
  const material = stored === null ? undefined : facts.materials.get(stored.materialId);
  if (stored === null || material === undefined) notFound();
  const up = <Link href="/stock">{t("up")}</Link>;
  if (stored.deletedAt !== null) return <DeletedLot id={id} name={material.name} up={up} />;
  const live = events.filter((event) => event.undoneAt === null);
  const own = { ...facts, lots: [stored], events: live };
  const [onDay] = lotsOnDay(day, own);
  const dayChoice = (
    <DaySwitch
      path={`/stock/${id}`}
      day={day}
      today={today}
      words={{ label: words("asOf"), show: words("show"), back: words("backToToday") }}
    />
  );
  if (onDay === undefined)
    return (
      <>
        <PageHead title={material.name} up={up} answer={life("notYet", { day: dayText(day, locale) })} />
        {dayChoice}
      </>
    );
  const text = lotText(onDay, day, savings(null, day, day, own).rows, locale);
  const names = namesOf(facts);
  const needs = needsOf(exposure(day, facts), facts, locale);
  const lot: LotContext = {
    lot: onDay,
    events: live,
    material,
    valuation: facts.valuation,
    more: lotMore(onDay, live, material, day, locale),
    needs: needs.filter((need) => need.materialIds.includes(material.id)),
    names,
    projectOf: new Map(facts.requirements.map((need) => [need.id, names.project(need.projectId)])),
    places,
    day,
  };
  const now = day === today;
  const sale = <SalePart lot={onDay} events={live} day={day} currency={facts.valuation.homeCurrency} />;
  return (
    <>
      <Done
        lotId={id}
        query={searchParams}
        events={events}
        unit={material.purchaseUnit}
        name={material.name}
      />
      <SalvageDone query={searchParams} lotId={id} name={material.name} />
      <PageHead
        title={material.name}
        up={up}
        answer={
          <>
            {now ? null : `${words("titleAsOf", { day: dayText(day, locale) })}. `}
            <LotAnswer lot={text} currency={facts.valuation.homeCurrency} />
          </>
        }
        aside={<Link href={`/materials/${material.id}`}>{t("itsPrices")}</Link>}
      />
      <LotFacts {...lot} />
      {cautionsOf([text], facts.materials).map((caution) => (
        <Caution key={caution}>{t(caution)}</Caution>
      ))}
      <PriceFellNotice lotId={id} day={day} />
      <SalvagePart lot={onDay} day={day} />
      {now ? (
        <>
          <ReceiveForm {...lot} />
          <PayForm {...lot} />
          <TakeForms {...lot} />
          {stored.origin === "salvaged" ? sale : null}
          <MoveForm {...lot} />
          <MoreWithLot {...lot}>{stored.origin === "salvaged" ? null : sale}</MoreWithLot>
        </>
      ) : null}
      <Whereabouts lot={onDay} events={live} day={day} now={now} projectOf={lot.projectOf} saving={text} />
      <Events
        lotId={id}
        steps={lotLife(stored, events, locale).filter(({ on }) => on <= day)}
        projectOf={lot.projectOf}
        placeName={places.name}
        unit={material.purchaseUnit}
      />
      <Receipt lot={stored} text={text} names={names} currency={facts.valuation.homeCurrency} />
      {dayChoice}
      <Changes lotId={id} />
      <DeleteLot id={id} />
    </>
  );
}
