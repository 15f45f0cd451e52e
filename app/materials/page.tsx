import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { valuationOf } from "../../lib/data/facts.ts";
import { materialsOf } from "../../lib/data/materials.ts";
import { recentObservations } from "../../lib/data/recent-observations.ts";
import { CATEGORIES } from "../../lib/materials/material.ts";
import { comparisonBasis } from "../../lib/show/comparison-basis.ts";
import { hasEveryWord } from "../../lib/show/every-word.ts";
import { materialRows } from "../../lib/show/material-rows.ts";
import { pageOf } from "../../lib/show/page-of.ts";
import { EmptyState } from "../_ui/empty-state.tsx";
import { FindForm } from "../_ui/find-form.tsx";
import { LinkButton } from "../_ui/link-button.tsx";
import { PageHead } from "../_ui/page-head.tsx";
import { basisWords } from "../_words/basis-words.ts";
import { asked, type Query } from "../_workspace/day-asked.ts";
import { scopeSeen, today } from "../_workspace/workspace-seen.ts";
import { archiveMaterialForm, restoreMaterialForm } from "./actions.ts";
import { ArchivedTable } from "./archived-table.tsx";
import { Done } from "./done.tsx";
import style from "./materials.module.css";
import { MaterialsTable } from "./materials-table.tsx";
import { undoOf } from "./undo-of.ts";

export const dynamic = "force-dynamic";
const SHOWN = 60;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("materials"))("title") };
}

/** All materials: the last price of each, all in, how old it is and how it moved. */
export default async function MaterialsPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("materials");
  const c = await getTranslations("categories");
  const ui = await getTranslations("ui");
  const scope = await scopeSeen();
  const day = await today();
  const find = (await asked(searchParams, "find"))?.slice(0, 200) ?? "";
  const category = (await asked(searchParams, "category")) ?? "";
  const done = await asked(searchParams, "done");
  const undo = undoOf(done, await asked(searchParams, "undo"), {
    archived: restoreMaterialForm,
    restored: archiveMaterialForm,
  });
  const [all, archived] = await Promise.all([materialsOf(scope), materialsOf(scope, { archived: true })]);
  const add = (
    <LinkButton key="add" kind={all.length === 0 ? "main" : "plain"} href="/materials/new">
      {t("add")}
    </LinkButton>
  );
  const doneBar = <Done code={done} undo={undo === null ? undefined : { ...undo, label: ui("undo") }} />;
  if (all.length === 0)
    return (
      <>
        {doneBar}
        <PageHead title={t("title")} />
        <EmptyState title={t("emptyTitle")} action={add}>
          {t("emptyText")}
        </EmptyState>
        <ArchivedTable materials={archived} />
      </>
    );
  const matching = all.filter(
    (material) => hasEveryWord(material.name, find) && (category === "" || material.category === category),
  );
  const page = pageOf(matching, await asked(searchParams, "page"), SHOWN);
  const ids = page.items.map(({ id }) => id);
  const [observations, valuation] = await Promise.all([
    recentObservations(scope, ids, day),
    valuationOf(scope),
  ]);
  const locale = await getLocale();
  const rows = materialRows(day, page.items, observations, valuation, locale);
  const basis = (await basisWords())(comparisonBasis("last-seen", valuation, day, locale));
  const narrowed = find !== "" || category !== "";
  const stale = rows.filter(({ last }) => last?.stale).length;
  const query = new URLSearchParams({ find, category });
  return (
    <>
      {doneBar}
      <PageHead
        title={t("title")}
        answer={
          narrowed || page.of > 1
            ? t("answerPart", { count: matching.length })
            : t("answer", { count: all.length, stale })
        }
        aside={[
          add,
          <LinkButton key="log" kind="main" href="/log">
            {t("page.log")}
          </LinkButton>,
        ]}
      />
      <FindForm
        path="/materials"
        typed={find}
        kind={category}
        kinds={[
          { value: "", label: t("allCategories") },
          ...CATEGORIES.map((one) => ({ value: one, label: c(one) })),
        ]}
        words={{
          find: t("find"),
          hint: t("findHint"),
          kind: t("category"),
          show: t("filter"),
          clear: t("clear"),
        }}
      />
      {rows.length > 0 ? (
        <>
          <p className={style.quiet}>{basis}</p>
          <MaterialsTable rows={rows} currency={valuation.homeCurrency} />
        </>
      ) : null}
      {page.of > 1 ? (
        <p className={style.pages}>
          {t("showing", { from: page.from, until: page.until, count: matching.length })}
          {page.number > 1 ? (
            <Link href={`/materials?${query}&page=${page.number - 1}`}>{t("before")}</Link>
          ) : null}
          {page.number < page.of ? (
            <Link href={`/materials?${query}&page=${page.number + 1}`}>{t("next")}</Link>
          ) : null}
        </p>
      ) : null}
      {narrowed ? null : <ArchivedTable materials={archived} />}
    </>
  );
}
