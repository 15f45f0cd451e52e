import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { placeContents } from "../../../lib/data/place-contents.ts";
import { placesOf } from "../../../lib/data/places.ts";
import { placeText } from "../../../lib/show/place-text.ts";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import style from "./places.module.css";
import { Rooms } from "./rooms.tsx";
import { WeightLine } from "./weight-line.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("places"))("title") };
}

/** The places stock lies in: how full each is, and what lies there weighs. */
export default async function PlacesPage() {
  const t = await getTranslations("places");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const [{ places, materials }, archived] = await Promise.all([
    placeContents(scope, await today()),
    placesOf(scope, { archived: true }),
  ]);
  const texts = places.map(({ place, loads }) => placeText(place, loads, locale));
  const shown = new Set(texts.map(({ id }) => id));
  const empty = archived.filter(({ id }) => !shown.has(id));
  const materialName = (id: string) => materials.get(id)?.name ?? "–";
  const add = (kind: "main" | "plain") => (
    <LinkButton kind={kind} href="/stock/places/new">
      {t("add")}
    </LinkButton>
  );
  return (
    <>
      <PageHead
        title={t("title")}
        up={<Link href="/stock">{t("toStock")}</Link>}
        answer={t.rich("answer", {
          count: texts.length,
          over: texts.filter(({ rooms }) => rooms.some(({ over }) => over !== null)).length,
          b: said,
        })}
        aside={texts.length === 0 ? null : add("plain")}
      />
      {texts.length === 0 ? (
        <EmptyState title={t("emptyTitle")} action={add("main")}>
          {t("emptyText")}
        </EmptyState>
      ) : (
        <ul className={style.places}>
          {texts.map((place) => (
            <li key={place.id}>
              <div>
                <Link href={`/stock/places/${place.id}`} className={style.name}>
                  {place.name}
                </Link>
                <p>
                  {place.archived ? `${t("archived")} ` : ""}
                  {t("lotsThere", { count: place.lots })}{" "}
                  <WeightLine weight={place.weight} materialName={materialName} />
                </p>
              </div>
              <Rooms rooms={place.rooms} materialName={materialName} />
            </li>
          ))}
        </ul>
      )}
      {empty.length > 0 ? (
        <details>
          <summary>{t("archivedCount", { count: empty.length })}</summary>
          <ul>
            {empty.map(({ id, name }) => (
              <li key={id}>
                <Link href={`/stock/places/${id}`}>{name}</Link>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </>
  );
}
