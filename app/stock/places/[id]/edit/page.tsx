import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { place as placeById } from "../../../../../lib/data/places.ts";
import { fingerprint } from "../../../../_forms/fingerprint.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { PageHead, Part } from "../../../../_ui/page-head.tsx";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../../_workspace/workspace-seen.ts";
import { archivePlaceForm, changePlaceForm, restorePlaceForm } from "../../actions.ts";
import { PlaceFields } from "../../place-fields.tsx";

export const dynamic = "force-dynamic";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: (await placeById(await scopeSeen(), idAsked((await params).id)))?.name };
}

/** A place: its name and limits, archiving it and bringing it back. */
export default async function EditPlacePage({ params }: Props) {
  const t = await getTranslations("places");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const place = await placeById(await scopeSeen(), idAsked((await params).id));
  if (place === null) notFound();
  const live = place.archivedOn === null;
  return (
    <>
      <PageHead
        title={t("changeTitle", { name: place.name })}
        up={<Link href={`/stock/places/${place.id}`}>{place.name}</Link>}
      />
      <Form action={changePlaceForm} seen={fingerprint(place)} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="ofPlace" value={place.id} />
        <PlaceFields place={place} />
        <Button pending={ui("saving")}>{t("save")}</Button>
      </Form>
      <Part title={live ? s("archive") : s("restore")} note={t("archiveNote")}>
        <form action={live ? archivePlaceForm : restorePlaceForm}>
          <input type="hidden" name="id" value={place.id} />
          <Button kind="plain">{live ? s("archive") : s("restore")}</Button>
        </form>
      </Part>
    </>
  );
}
