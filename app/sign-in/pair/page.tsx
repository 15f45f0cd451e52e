import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { Button } from "../../_ui/button.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { pairForm } from "../actions.ts";
import { CodeField } from "../code-field.client.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("signIn"))("pairTitle") };
}

/** One more device. Opening the link does nothing yet, as programs that preview links open them too. */
export default async function PairPage() {
  const t = await getTranslations("signIn");
  return (
    <>
      <PageHead
        title={t("pairTitle")}
        answer={t("pairAnswer")}
        up={<Link href="/sign-in">{t("title")}</Link>}
      />
      <Form action={pairForm} faultsTitle={t("faultsTitle")}>
        <CodeField label={t("code")} />
        <Button pending={t("entering")}>{t("pair")}</Button>
      </Form>
    </>
  );
}
