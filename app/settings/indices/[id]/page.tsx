import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { indexValues } from "../../../../lib/data/index-values.ts";
import { materialsOf } from "../../../../lib/data/materials.ts";
import { materialsOfIndex, referenceIndex } from "../../../../lib/data/reference-indices.ts";
import { indexMonths } from "../../../../lib/show/index-rows.ts";
import { PageHead, Part } from "../../../_ui/page-head.tsx";
import { Table } from "../../../_ui/table.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../_workspace/workspace-seen.ts";
import { Done } from "../../done.tsx";
import { MaterialsNaming } from "./materials-naming.tsx";

export const dynamic = "force-dynamic";
const SHOWN = 36;

export async function generateMetadata({ params }: PageProps<"/settings/indices/[id]">): Promise<Metadata> {
  return { title: (await referenceIndex(await scopeSeen(), idAsked((await params).id)))?.name };
}

/** A reference index: its newest months with what was published of them before, and the materials held against it. */
export default async function IndexPage({ params, searchParams }: PageProps<"/settings/indices/[id]">) {
  const t = await getTranslations("settings.indices");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const { done } = await searchParams;
  const [index, values, materials, naming] = await Promise.all([
    referenceIndex(scope, id),
    indexValues(scope, id),
    materialsOf(scope),
    materialsOfIndex(scope, id),
  ]);
  if (index === null) notFound();
  const months = indexMonths(values, await today(), locale);
  return (
    <>
      <Done code={done} />
      <PageHead
        title={index.name}
        answer={t("of", {
          publisher: index.publisher,
          series: index.series,
          base: index.base ?? t("baseNotSaid"),
        })}
        up={<Link href="/settings/indices">{t("title")}</Link>}
      />
      <MaterialsNaming id={id} naming={naming} materials={materials} />
      <Part
        title={t("values")}
        note={t("valuesNote", { shown: Math.min(SHOWN, months.length), count: months.length })}
      >
        <Table
          caption={t("values")}
          captionHidden
          cards
          columns={[
            { key: "month", label: t("month") },
            { key: "value", label: t("value"), figures: true },
            { key: "published", label: t("published") },
            { key: "earlier", label: t("earlier") },
          ]}
          rows={months.slice(0, SHOWN).map((one) => ({
            key: one.key,
            cells: [
              one.month,
              one.preliminary ? t("preliminary", { value: one.value }) : one.value,
              one.published,
              one.earlier.join("; "),
            ],
          }))}
        />
      </Part>
    </>
  );
}
