import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { saveTaxRegionForm } from "../actions.ts";
import { RegionFields } from "../region-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.taxes"))("addTitle") };
}

/** A tax region of the workspace's own. */
export default async function NewTaxRegionPage() {
  const t = await getTranslations("settings.taxes");
  const ui = await getTranslations("ui");
  return (
    <>
      <PageHead title={t("addTitle")} up={<Link href="/settings/taxes">{t("title")}</Link>} />
      <Form action={saveTaxRegionForm} faultsTitle={ui("faultsTitle")}>
        <RegionFields region={null} />
        <Button pending={ui("saving")}>{t("save")}</Button>
      </Form>
    </>
  );
}
