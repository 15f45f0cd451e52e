import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { PageHead } from "../../_ui/page-head.tsx";
import { joinForm } from "../actions.ts";
import { Newcomer } from "../newcomer.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("signIn"))("joinTitle") };
}

/** Somebody invited. */
export default async function JoinPage() {
  const t = await getTranslations("signIn");
  return (
    <>
      <PageHead
        title={t("joinTitle")}
        answer={t("joinAnswer")}
        up={<Link href="/sign-in">{t("title")}</Link>}
      />
      <Newcomer action={joinForm} />
    </>
  );
}
