import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { taxRegions } from "../../../../lib/data/tax-regions.ts";
import { dayText } from "../../../../lib/show/day-text.ts";
import { percentText } from "../../../../lib/show/percent-text.ts";
import { taxText } from "../../../../lib/show/tax-text.ts";
import { fingerprint } from "../../../_forms/fingerprint.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Notice } from "../../../_ui/notice.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { Table } from "../../../_ui/table.tsx";
import { scopeSeen, today } from "../../../_workspace/workspace-seen.ts";
import { Done } from "../../done.tsx";
import { confirmTaxForm, saveTaxRegionForm } from "../actions.ts";
import { RegionFields } from "../region-fields.tsx";

export const dynamic = "force-dynamic";

async function regionAsked(code: string) {
  const regions = await taxRegions(await scopeSeen());
  return regions.find((one) => one.code === decodeURIComponent(code)) ?? null;
}

export async function generateMetadata({ params }: PageProps<"/settings/taxes/[code]">): Promise<Metadata> {
  return { title: (await regionAsked((await params).code))?.name };
}

/** One tax region: its dated parts with where each is known from, confirming, and changing it for this workspace. */
export default async function TaxRegionPage({ params, searchParams }: PageProps<"/settings/taxes/[code]">) {
  const t = await getTranslations("settings.taxes");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const { done } = await searchParams;
  const region = await regionAsked((await params).code);
  if (region === null) notFound();
  const words = { none: t("noTax"), notKnown: t("notKnown") };
  const newestFirst = [...region.components].sort((a, b) => b.from.localeCompare(a.from));
  return (
    <>
      <Done code={done} />
      <PageHead
        title={region.name}
        answer={`${t("now")}: ${taxText(region, await today(), locale, words)}`}
        up={<Link href="/settings/taxes">{t("title")}</Link>}
      />
      {region.components.some((part) => part.fromMemory) ? (
        <Notice tone="warn">
          <p>{t("confirmText")}</p>
        </Notice>
      ) : null}
      <Table
        caption={t("components")}
        captionHidden
        cards
        columns={[
          { key: "name", label: t("component") },
          { key: "rate", label: t("rate"), figures: true },
          { key: "from", label: s("from") },
          { key: "until", label: s("until") },
          { key: "evidence", label: t("evidence") },
        ]}
        rows={newestFirst.map((part) => ({
          key: `${part.name} ${part.from}`,
          cells: [
            part.name,
            percentText(part.ratePercent, locale),
            dayText(part.from, locale),
            part.until === null ? "" : dayText(part.until, locale),
            <span key="evidence">
              {part.evidence}
              {part.fromMemory ? (
                <form action={confirmTaxForm}>
                  <input type="hidden" name="code" value={region.code} />
                  <input type="hidden" name="component" value={part.name} />
                  <input type="hidden" name="from" value={part.from} />
                  <Button
                    kind="plain"
                    label={t("confirmOne", { name: part.name, day: dayText(part.from, locale) })}
                  >
                    {t("confirm")}
                  </Button>
                </form>
              ) : null}
            </span>,
          ],
        }))}
      />
      <details>
        <summary>{t("changeTitle", { name: region.name })}</summary>
        <Form action={saveTaxRegionForm} seen={fingerprint(region)} faultsTitle={ui("faultsTitle")}>
          <RegionFields region={region} />
          <Button pending={ui("saving")}>{t("save")}</Button>
        </Form>
      </details>
    </>
  );
}
