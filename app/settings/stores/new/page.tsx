import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { valuationOf } from "../../../../lib/data/facts.ts";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { addStoreForm } from "../actions.ts";
import { StoreFields } from "../store-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("settings.stores"))("add") };
}

/** A new store. */
export default async function NewStorePage() {
  const t = await getTranslations("settings.stores");
  const ui = await getTranslations("ui");
  return (
    <>
      <PageHead title={t("add")} up={<Link href="/settings/stores">{t("title")}</Link>} />
      <Form action={addStoreForm} id={newId()} faultsTitle={ui("faultsTitle")}>
        <StoreFields store={null} valuation={await valuationOf(await scopeSeen())} />
        <Button pending={ui("saving")}>{t("save")}</Button>
      </Form>
    </>
  );
}
