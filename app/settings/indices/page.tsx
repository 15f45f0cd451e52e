import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { indexValues } from "../../../lib/data/index-values.ts";
import { referenceIndices } from "../../../lib/data/reference-indices.ts";
import { takenFiles } from "../../../lib/data/taken-files.ts";
import { indexMonths } from "../../../lib/show/index-rows.ts";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { Done } from "../done.tsx";
import { FilesList } from "../files/files-list.tsx";
import { IndexFileForm } from "./index-file-form.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.indices"))("title") };
}

/** The reference indices: where each comes from, how far it goes, and a file for more. */
export default async function IndicesPage({ searchParams }: PageProps<"/settings/indices">) {
  const t = await getTranslations("settings.indices");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const { done } = await searchParams;
  const scope = await scopeSeen();
  const day = await today();
  const [indices, files] = await Promise.all([referenceIndices(scope), takenFiles(scope, "index")]);
  const rows = await Promise.all(
    indices.map(async ({ id, name, series, publisher }) => {
      const months = indexMonths(await indexValues(scope, id), day, locale);
      const [last] = months;
      return {
        key: id,
        cells: [
          <Link key="name" href={`/settings/indices/${id}`}>
            {name}
          </Link>,
          `${publisher}, ${series}`,
          last === undefined ? ui("notKnown") : `${last.value} (${last.month})`,
          String(months.length),
          String(months.filter(({ earlier }) => earlier.length > 0).length),
        ],
      };
    }),
  );
  return (
    <>
      <Done code={done} />
      <PageHead
        title={t("title")}
        answer={t("answer", { count: indices.length })}
        up={<Link href="/settings">{s("back")}</Link>}
      />
      {rows.length > 0 ? (
        <Table
          caption={t("title")}
          captionHidden
          cards
          columns={[
            { key: "name", label: t("name") },
            { key: "source", label: t("from") },
            { key: "last", label: t("last"), figures: true },
            { key: "months", label: t("months"), figures: true },
            { key: "revised", label: t("revised"), figures: true },
          ]}
          rows={rows}
        />
      ) : null}
      <Part title={t("add")} note={t("why")}>
        <IndexFileForm indices={indices} day={day} />
      </Part>
      <FilesList files={files} />
    </>
  );
}
