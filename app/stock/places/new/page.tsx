import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { addPlaceForm } from "../actions.ts";
import { PlaceFields } from "../place-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("places"))("newTitle") };
}

/** A new place for stock. */
export default async function NewPlacePage() {
  const t = await getTranslations("places");
  const ui = await getTranslations("ui");
  return (
    <>
      <PageHead title={t("newTitle")} up={<Link href="/stock/places">{t("up")}</Link>} />
      <Form action={addPlaceForm} id={newId()} faultsTitle={ui("faultsTitle")}>
        <PlaceFields place={null} />
        <Button pending={ui("saving")}>{t("add")}</Button>
      </Form>
    </>
  );
}
