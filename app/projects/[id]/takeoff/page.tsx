import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { project as projectById } from "../../../../lib/data/projects.ts";
import { CALCULATOR_NAMES } from "../../../../lib/takeoff/calculators.ts";
import { LinksList } from "../../../_ui/links-list.tsx";
import { Caution } from "../../../_ui/notice.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("takeoff"))("title") };
}

type Props = Readonly<{ params: Promise<{ id: string }> }>;

/** What can be measured, to choose from. */
export default async function TakeoffPage({ params }: Props) {
  const t = await getTranslations("takeoff");
  const id = idAsked((await params).id);
  const project = await projectById(await scopeSeen(), id);
  if (project === null) notFound();
  const links = CALCULATOR_NAMES.map((name) => ({
    href: `/projects/${id}/takeoff/${name}`,
    title: t(`calculators.${name}.title`),
    text: t(`calculators.${name}.text`),
  }));
  return (
    <>
      <PageHead
        title={t("title")}
        answer={t("note")}
        up={<Link href={`/projects/${id}`}>{project.name}</Link>}
      />
      <LinksList links={links} />
      <Caution>{t("caution")}</Caution>
    </>
  );
}
