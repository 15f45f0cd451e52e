import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { savingsFacts } from "../../lib/data/facts.ts";
import { lotsOf } from "../../lib/data/lots.ts";
import { savings } from "../../lib/savings/savings.ts";
import { lotsMore } from "../../lib/show/lot-more.ts";
import { lotsOnDay, lotText, stockText } from "../../lib/show/lot-text.ts";
import { filteredLots } from "../../lib/show/stock-filter.ts";
import { EmptyState } from "../_ui/empty-state.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { Caution } from "../_ui/notice.tsx";
import { PageHead, Part } from "../_ui/page-head.tsx";
import { said } from "../_ui/said.tsx";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { namesOf } from "../_workspace/names-of.ts";
import { scopeSeen, today } from "../_workspace/workspace-seen.ts";
import { cautionsOf } from "./cautions.ts";
import { DeletedLots } from "./deleted-lots.tsx";
import { Done } from "./done.tsx";
import { FilterForm } from "./filter-form.tsx";
import { LotsTable } from "./lots-table.tsx";
import { allPlaces } from "./place-choices.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("stock"))("title") };
}

/** Stock: what lies where, how much of it is free, at which cost; narrowed by place, project and material. */
export default async function StockPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("stock");
  const salvage = await getTranslations("salvage");
  const life = await getTranslations("lotLife");
  const locale = await getLocale();
  const day = await today();
  const scope = await scopeSeen();
  const [facts, deleted, places] = await Promise.all([
    savingsFacts(scope, null, day),
    lotsOf(scope, { deleted: true }),
    allPlaces(scope),
  ]);
  const { rows } = savings(null, day, day, facts);
  const all = lotsOnDay(day, facts);
  const more = lotsMore(all, facts, day, locale);
  const filter = {
    placeId: (await asked(searchParams, "place")) ?? null,
    projectId: (await asked(searchParams, "project")) ?? null,
    materialId: (await asked(searchParams, "material")) ?? null,
  };
  const lots = filteredLots(all, more, facts.requirements, filter);
  const total = stockText(lots, facts.valuation.homeCurrency, locale);
  const texts = lots.map((lot) => lotText(lot, day, rows, locale));
  const held = texts.filter((lot) => lot.onHand !== null);
  const gone = texts.filter((lot) => lot.onHand === null);
  const names = namesOf(facts);
  const table = { names, more, placeName: places.name, currency: facts.valuation.homeCurrency };
  const narrowed = Object.values(filter).some((one) => one !== null);
  const record = (kind: "main" | "plain") => (
    <LinkButton kind={kind} href="/stock/new">
      {t("record")}
    </LinkButton>
  );
  return (
    <>
      <Done query={searchParams} />
      <PageHead
        title={t("title")}
        answer={
          held.length === 0
            ? narrowed
              ? life("filter.none")
              : t("answerEmpty")
            : t.rich("answer", {
                lots: total.lots,
                cost: total.cost,
                currency: facts.valuation.homeCurrency,
                free: total.free,
                b: said,
              })
        }
        aside={
          <>
            <LinkButton href="/bills/new">{t("enterReceipt")}</LinkButton>
            {all.length === 0 ? null : record("plain")}
            <Link href="/stock/salvage">{salvage("link")}</Link>
            <Link href="/stock/places">{life("toPlaces")}</Link>
            <Link href="/bills">{t("receipts")}</Link>
          </>
        }
      />
      {all.length === 0 ? (
        <EmptyState title={t("emptyTitle")} action={record("main")}>
          {t("emptyText")}
        </EmptyState>
      ) : (
        <FilterForm
          filter={filter}
          places={places.choices}
          projects={facts.projects.map(({ id, name }) => ({ value: id, label: name }))}
          materials={[...new Set(all.map(({ lot }) => lot.materialId))].map((id) => ({
            value: id,
            label: names.material(id),
          }))}
        />
      )}
      {held.length > 0 ? (
        <Part title={t("table")} note={t("freeWorth")}>
          <LotsTable lots={held} caption={t("table")} {...table} />
          {total.unknown > 0 ? <p>{t("unknownCosts", { count: total.unknown })}</p> : null}
          {cautionsOf(held, facts.materials).map((caution) => (
            <Caution key={caution}>{t(caution)}</Caution>
          ))}
        </Part>
      ) : null}
      {gone.length > 0 ? (
        <details>
          <summary>{t("usedUpCount", { count: gone.length })}</summary>
          <LotsTable lots={gone} caption={t("usedUp")} {...table} />
        </details>
      ) : null}
      {deleted.length > 0 ? <DeletedLots lots={deleted} /> : null}
    </>
  );
}
