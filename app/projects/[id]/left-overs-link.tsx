import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ExposureFacts } from "../../../lib/exposure/exposure-facts.ts";
import { projectLeftovers } from "../../../lib/show/left-over-text.ts";
import { LinkButton } from "../../_ui/link-button.tsx";

type LeftOversLinkProps = Readonly<{
  facts: ExposureFacts;
  day: LocalDate;
  today: LocalDate;
  projectId: string;
}>;

/** The way to take left-overs back, and to move what is set aside to another project. Nothing where nothing was ever locked in. */
export async function LeftOversLink({ facts, day, today, projectId }: LeftOversLinkProps) {
  const t = await getTranslations("lotLife");
  const own = facts.requirements.filter((need) => need.projectId === projectId).map(({ id }) => id);
  const { over, draws } = projectLeftovers(own, facts, day, await getLocale());
  if (day !== today || over.length + draws.length === 0) return null;
  return (
    <p>
      <LinkButton href={`/projects/${projectId}/left-overs`}>{t("over.link")}</LinkButton>
    </p>
  );
}
