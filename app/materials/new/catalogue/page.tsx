import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { CATALOGUE } from "../../../../lib/materials/catalogue/catalogue.ts";
import { hasEveryWord } from "../../../../lib/show/every-word.ts";
import { LinksList } from "../../../_ui/links-list.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { FindInCatalogue } from "../find-in-catalogue.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("materials.form"))("catalogueTitle") };
}

/** Ready-made materials, found by any of their words: each leads to the form, filled. Plain links: no script is needed. */
export default async function CataloguePage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("materials.form");
  const c = await getTranslations("categories");
  const units = await unitWords();
  const find = (await asked(searchParams, "find"))?.slice(0, 200) ?? "";
  const category = (await asked(searchParams, "category")) ?? "";
  const found = CATALOGUE.filter(
    (entry) =>
      (category === "" || entry.category === category) &&
      hasEveryWord(`${entry.name} ${entry.words ?? ""} ${c(entry.category)}`, find),
  );
  return (
    <>
      <PageHead
        title={t("catalogueTitle")}
        answer={t("catalogueAnswer", { count: found.length })}
        up={<Link href="/materials/new">{t("pickTitle")}</Link>}
      />
      <FindInCatalogue typed={find} kind={category} />
      {found.length === 0 ? null : (
        <LinksList
          links={found.map((entry) => ({
            href: `/materials/new?from=${entry.key}`,
            title: entry.name,
            text: t("boughtBy", { category: c(entry.category), unit: units.one(entry.purchaseUnit) }),
          }))}
        />
      )}
    </>
  );
}
