import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { materialFacts } from "../../../lib/data/facts.ts";
import { material as materialById } from "../../../lib/data/materials.ts";
import { observationsOf } from "../../../lib/data/observations.ts";
import { indexOfMaterial } from "../../../lib/data/reference-indices.ts";
import { materialOf } from "../../../lib/exposure/exposure-facts.ts";
import { offersOn } from "../../../lib/prices/offers.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { DaySwitch } from "../../_ui/day-switch.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { asked, dayAsked } from "../../_workspace/day-asked.ts";
import { idAsked } from "../../_workspace/id-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { ArchiveButton } from "../archive-button.tsx";
import { Done } from "../done.tsx";
import { SeenPrices } from "../seen-prices.tsx";
import { undoPrice } from "../undo-price.ts";
import { Answer } from "./answer.tsx";
import { BesideIndex } from "./beside-index.tsx";
import { Offers } from "./offers.tsx";
import { Sizes } from "./sizes.tsx";
import { TellMe, ToldDone } from "./tell-me.tsx";
import { Trend } from "./trend.tsx";
import { viewOf } from "./view.ts";

export const dynamic = "force-dynamic";
const SHOWN = 12;

export async function generateMetadata({ params }: PageProps<"/materials/[id]">): Promise<Metadata> {
  return { title: (await materialById(await scopeSeen(), idAsked((await params).id)))?.name };
}

/** A material: what one costs, how that has moved, what is offered, and every price as seen. */
export default async function MaterialPage({ params, searchParams }: PageProps<"/materials/[id]">) {
  const t = await getTranslations("materials");
  const now = await getTranslations("today");
  const locale = await getLocale();
  const id = idAsked((await params).id);
  const { day, today } = await dayAsked(searchParams);
  const scope = await scopeSeen();
  const [facts, seen, named] = await Promise.all([
    materialFacts(scope, id, day),
    observationsOf(scope, id, { limit: SHOWN, includeDeleted: true }),
    indexOfMaterial(scope, id),
  ]);
  if (facts === null) notFound();
  const material = materialOf(facts, id);
  const { valuation } = facts;
  const query = {
    per: await asked(searchParams, "per"),
    in: await asked(searchParams, "in"),
    period: await asked(searchParams, "period"),
    asOf: await asked(searchParams, "asOf"),
  };
  const offers = offersOn(day, facts.observations, material, valuation);
  const words = { day: dayText(day, locale), now: day === today ? "yes" : "no" };
  const { archivedOn } = material;
  return (
    <>
      <Done code={await asked(searchParams, "done")} undo={await undoPrice(searchParams)} />
      <ToldDone query={searchParams} materialId={id} />
      <PageHead
        title={day === today ? material.name : t("page.titleAsOf", { name: material.name, day: words.day })}
        answer={<Answer day={day} material={material} facts={facts} offers={offers} />}
        up={<Link href="/materials">{t("back")}</Link>}
        aside={[
          archivedOn === null ? (
            <LinkButton key="log" kind="main" href={`/log?material=${id}`}>
              {t("page.log")}
            </LinkButton>
          ) : null,
          <LinkButton key="change" href={`/materials/${id}/edit`}>
            {t("page.change")}
          </LinkButton>,
        ]}
      />
      <Trend material={material} facts={facts} view={viewOf(query, day, material, facts)} />
      {named === null ? null : <BesideIndex named={named} day={day} material={material} facts={facts} />}
      <Offers
        title={t("page.offers", words)}
        day={day}
        material={material}
        offers={offers}
        valuation={valuation}
      />
      <Part title={t("page.prices")} note={t("page.pricesNote", words)}>
        {seen.items.length === 0 ? (
          <p>{t("page.noPrices")}</p>
        ) : (
          <SeenPrices
            day={day}
            seen={seen.items}
            offers={offers}
            storeName={(storeId) => valuation.stores.get(storeId)?.name ?? "–"}
          />
        )}
        {seen.next === null ? null : (
          <p>
            <Link href={`/materials/${id}/prices`}>{t("page.allPrices")}</Link>
          </p>
        )}
      </Part>
      {archivedOn === null ? <TellMe material={material} valuation={valuation} /> : null}
      <Sizes material={material} recheckDays={valuation.recheckDays} />
      <ArchiveButton material={material} />
      <DaySwitch
        path={`/materials/${id}`}
        day={day}
        today={today}
        words={{ label: now("asOf"), show: now("show"), back: now("backToToday") }}
      />
    </>
  );
}
