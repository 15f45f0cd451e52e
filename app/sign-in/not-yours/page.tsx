import { getTranslations } from "next-intl/server";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";

export const dynamic = "force-dynamic";

/** Shown in the place of what a role does not include. */
export default async function NotYoursPage() {
  const t = await getTranslations("signIn");
  return (
    <EmptyState title={t("notYoursTitle")} action={<LinkButton href="/sign-in/you">{t("you")}</LinkButton>}>
      {t("notYoursText")}
    </EmptyState>
  );
}
