import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { PageHead } from "../../_ui/page-head.tsx";
import { firstForm } from "../actions.ts";
import { Newcomer } from "../newcomer.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("signIn"))("first") };
}

/** The first owner of the house. */
export default async function FirstPage() {
  const t = await getTranslations("signIn");
  return (
    <>
      <PageHead title={t("first")} answer={t("firstAnswer")} up={<Link href="/sign-in">{t("title")}</Link>} />
      <Newcomer action={firstForm} />
    </>
  );
}
