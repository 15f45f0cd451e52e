import { useTranslations } from "next-intl";
import { EmptyState } from "./_ui/empty-state.tsx";
import { LinkButton } from "./_ui/link-button.tsx";

/** An address without a page, or a thing that is not there. */
export default function NotFound() {
  const t = useTranslations("shell");
  return (
    <EmptyState title={t("notThere")} action={<LinkButton href="/">{t("toToday")}</LinkButton>}>
      {t("notThereText")}
    </EmptyState>
  );
}
