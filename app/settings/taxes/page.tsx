import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { taxRegions } from "../../../lib/data/tax-regions.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { taxText } from "../../../lib/show/tax-text.ts";
import { LinkButton } from "../../_ui/link-button.tsx";
import { Below } from "../../_ui/money-text.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { Done } from "../done.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.taxes"))("title") };
}

/** Every tax region with its tax of today; those written from memory carry a mark. */
export default async function TaxesPage({ searchParams }: PageProps<"/settings/taxes">) {
  const t = await getTranslations("settings.taxes");
  const s = await getTranslations("settings");
  const locale = await getLocale();
  const { done } = await searchParams;
  const day = await today();
  const regions = await taxRegions(await scopeSeen());
  const marked = (codes: typeof regions) =>
    codes.filter((one) => one.components.some((part) => part.fromMemory));
  return (
    <>
      <Done code={done} />
      <PageHead
        title={t("title")}
        answer={t("answer", { marked: marked(regions).length })}
        up={<Link href="/settings">{s("back")}</Link>}
        aside={<LinkButton href="/settings/taxes/new">{t("add")}</LinkButton>}
      />
      <Table
        caption={t("title")}
        captionHidden
        cards
        dense
        columns={[
          { key: "region", label: t("region") },
          { key: "now", label: t("now") },
          { key: "from", label: t("history") },
        ]}
        rows={regions.map((region) => ({
          key: region.code,
          cells: [
            <Link key="name" href={`/settings/taxes/${encodeURIComponent(region.code)}`}>
              {region.name}
            </Link>,
            <span key="tax">
              {taxText(region, day, locale, { none: t("noTax"), notKnown: t("notKnown") })}
              {marked([region]).length > 0 ? <Below>{t("fromMemory")}</Below> : null}
            </span>,
            dayText(region.completeFrom, locale),
          ],
        }))}
      />
    </>
  );
}
