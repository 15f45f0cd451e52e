import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { lotsOf } from "../../../../lib/data/lots.ts";
import { materialsOf } from "../../../../lib/data/materials.ts";
import { contentsOfPlace } from "../../../../lib/data/place-contents.ts";
import { place as placeById } from "../../../../lib/data/places.ts";
import { placeText } from "../../../../lib/show/place-text.ts";
import { LinkButton } from "../../../_ui/link-button.tsx";
import { Caution, Notice } from "../../../_ui/notice.tsx";
import { PageHead, Part } from "../../../_ui/page-head.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../_workspace/workspace-seen.ts";
import { cautionsOf } from "../../cautions.ts";
import { Rooms } from "../rooms.tsx";
import { WeightLine } from "../weight-line.tsx";
import { Contents } from "./contents.tsx";
import { PlaceDone } from "./done.tsx";
import { WhatFits } from "./fits.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: (await placeById(await scopeSeen(), idAsked((await params).id)))?.name };
}

/** A place: how full it is, what lies there and what that weighs, what still fits, with the cautions for what lies there. */
export default async function PlacePage({ params, searchParams }: Props) {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const id = idAsked((await params).id);
  const day = await today();
  const scope = await scopeSeen();
  const [contents, lots, live] = await Promise.all([
    contentsOfPlace(scope, id, day),
    lotsOf(scope),
    materialsOf(scope),
  ]);
  if (contents === null) notFound();
  const { place, loads } = contents;
  const text = placeText(place, loads, await getLocale());
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const own = new Map(loads.map(({ material }) => [material.id, material]));
  const materialName = (one: string) => own.get(one)?.name ?? "–";
  const wished = await asked(searchParams, "material");
  const there = loads.flatMap(({ lotId }) => byId.get(lotId) ?? []);
  return (
    <>
      <PlaceDone query={searchParams} id={id} />
      <PageHead
        title={place.name}
        up={<Link href="/stock/places">{t("up")}</Link>}
        answer={
          <>
            {text.archived ? `${t("archived")} ` : ""}
            {t("lotsThere", { count: loads.length })}{" "}
            <WeightLine weight={text.weight} materialName={materialName} />
          </>
        }
        aside={
          <>
            {loads.length === 0 ? null : (
              <LinkButton href={`/stock/places/${id}/count`}>{t("count.link")}</LinkButton>
            )}
            <LinkButton href={`/stock/places/${id}/money`}>{t("money.link")}</LinkButton>
            <Link href={`/stock/places/${id}/edit`}>{t("change")}</Link>
          </>
        }
      />
      {place.note ? <p>{place.note}</p> : null}
      <Part title={t("roomTitle")}>
        <Rooms rooms={text.rooms} materialName={materialName} />
      </Part>
      {cautionsOf(there, own).map((caution) => (
        <Caution key={caution}>{stock(caution)}</Caution>
      ))}
      {text.panels && (text.covered === false || text.ventilated === false) ? (
        <Notice tone="warn">
          <p>
            {t("panelsUnprotected", {
              covered: text.covered === false ? "no" : "yes",
              ventilated: text.ventilated === false ? "no" : "yes",
            })}
          </p>
        </Notice>
      ) : null}
      <Contents loads={loads} lots={byId} day={day} />
      <WhatFits
        contents={contents}
        materials={live}
        chosen={live.find((material) => material.id === wished) ?? null}
      />
    </>
  );
}
