import { getTranslations } from "next-intl/server";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead } from "../../_ui/page-head.tsx";

export const dynamic = "force-dynamic";

/** Shown in the place of what a role does not include. */
export default async function NotYoursPage() {
  const t = await getTranslations("signIn");
  return (
    <>
      <PageHead title={t("notYoursTitle")} answer={t("notYoursText")} />
      <LinkButton href="/sign-in/you">{t("you")}</LinkButton>
    </>
  );
}
