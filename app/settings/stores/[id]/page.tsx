import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { valuationOf } from "../../../../lib/data/facts.ts";
import { store as storeById } from "../../../../lib/data/stores.ts";
import { dayText } from "../../../../lib/show/day-text.ts";
import { fingerprint } from "../../../_forms/fingerprint.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead, Part } from "../../../_ui/page-head.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { archiveStoreForm, changeStoreForm, restoreStoreForm } from "../actions.ts";
import { StoreFields } from "../store-fields.tsx";
import { Levels } from "./levels.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata({ params }: PageProps<"/settings/stores/[id]">): Promise<Metadata> {
  const store = await storeById(await scopeSeen(), idAsked((await params).id));
  return { title: store?.name };
}

/** A store: change it, archive it, bring it back. */
export default async function StorePage({ params }: PageProps<"/settings/stores/[id]">) {
  const t = await getTranslations("settings.stores");
  const s = await getTranslations("settings");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const store = await storeById(scope, idAsked((await params).id));
  if (store === null) notFound();
  const archived = store.archivedOn;
  return (
    <>
      <PageHead
        title={t("changeTitle", { name: store.name })}
        answer={archived === null ? null : s("archivedOn", { day: dayText(archived, locale) })}
        up={<Link href="/settings/stores">{t("title")}</Link>}
      />
      <Form action={changeStoreForm} seen={fingerprint(store)} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="storeId" value={store.id} />
        <StoreFields store={store} valuation={await valuationOf(scope)} />
        <Button pending={ui("saving")}>{t("save")}</Button>
      </Form>
      {archived === null ? <Levels storeId={store.id} /> : null}
      <Part title={archived === null ? s("archive") : s("restore")} note={t("inUse")}>
        <form action={archived === null ? archiveStoreForm : restoreStoreForm}>
          <input type="hidden" name="id" value={store.id} />
          <Button kind="plain">{archived === null ? s("archive") : s("restore")}</Button>
        </form>
      </Part>
    </>
  );
}
