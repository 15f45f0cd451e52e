import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../../lib/data/facts.ts";
import { lot as lotById } from "../../../lib/data/lots.ts";
import { eventsOf } from "../../../lib/data/stock-events.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { savings } from "../../../lib/savings/savings.ts";
import { lotsOnDay, lotText } from "../../../lib/show/lot-text.ts";
import { needsOf } from "../../../lib/show/needs-of.ts";
import { Caution } from "../../_ui/notice.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import type { Query } from "../../_workspace/day-asked.ts";
import { idAsked } from "../../_workspace/id-asked.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { cautionsOf } from "../cautions.ts";
import { Changes } from "./changes.tsx";
import { DeleteLot } from "./delete-lot.tsx";
import { DeletedLot } from "./deleted-lot.tsx";
import { Done } from "./done.tsx";
import { Events } from "./events.tsx";
import { LotAnswer } from "./lot-answer.tsx";
import { Receipt } from "./receipt.tsx";
import { TakeForms } from "./take-forms.tsx";
import { Whereabouts } from "./whereabouts.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("stock"))("lotTitle") };
}

/** A lot: how much of it is there, using it, setting it aside, what happened to it, what it cost. */
export default async function LotPage({ params, searchParams }: Props) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const day = await today();
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const [stored, facts, events] = await Promise.all([
    lotById(scope, id),
    exposureFacts(scope, day),
    eventsOf(scope, id, { includeUndone: true }),
  ]);
  const material = stored === null ? undefined : facts.materials.get(stored.materialId);
  if (stored === null || material === undefined) notFound();
  const up = <Link href="/stock">{t("up")}</Link>;
  if (stored.deletedAt !== null) return <DeletedLot id={id} name={material.name} up={up} />;
  const own = { ...facts, lots: [stored], events: events.filter((event) => event.undoneAt === null) };
  const [onDay] = lotsOnDay(day, own);
  if (onDay === undefined) notFound();
  const text = lotText(onDay, day, savings(null, day, day, own).rows, locale);
  const names = namesOf(facts);
  const projectOf = new Map(facts.requirements.map((need) => [need.id, names.project(need.projectId)]));
  return (
    <>
      <Done query={searchParams} events={events} unit={material.purchaseUnit} name={material.name} />
      <PageHead
        title={material.name}
        up={up}
        answer={<LotAnswer lot={text} currency={facts.valuation.homeCurrency} />}
        aside={<Link href={`/materials/${material.id}`}>{t("itsPrices")}</Link>}
      />
      <TakeForms
        lot={onDay}
        needs={needsOf(exposure(day, facts), facts, locale).filter((need) =>
          need.materialIds.includes(material.id),
        )}
        names={names}
        projectOf={projectOf}
        day={day}
      />
      <Whereabouts lot={onDay} events={own.events} day={day} projectOf={projectOf} saving={text} />
      <Events lot={stored} events={events} projectOf={projectOf} unit={material.purchaseUnit} />
      <Receipt lot={stored} text={text} names={names} currency={facts.valuation.homeCurrency} />
      {cautionsOf([text], facts.materials).map((caution) => (
        <Caution key={caution}>{t(caution)}</Caution>
      ))}
      <Changes lotId={id} />
      <DeleteLot id={id} />
    </>
  );
}
