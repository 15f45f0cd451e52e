import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { project } from "../../../../lib/data/projects.ts";
import { dayText } from "../../../../lib/show/day-text.ts";
import { fingerprint } from "../../../_forms/fingerprint.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead, Part } from "../../../_ui/page-head.tsx";
import { Table } from "../../../_ui/table.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen, today, workspaceSeen } from "../../../_workspace/workspace-seen.ts";
import { changeProjectForm } from "../../actions.ts";
import { ProjectFields } from "../../project-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("projects"))("edit") };
}

/** A project's own fields, and its status over time. */
export default async function EditProjectPage({ params }: Readonly<{ params: Promise<{ id: string }> }>) {
  const t = await getTranslations("projects");
  const locale = await getLocale();
  const id = idAsked((await params).id);
  const found = await project(await scopeSeen(), id);
  if (found === null) notFound();
  const { homeCurrency } = await workspaceSeen();
  return (
    <>
      <PageHead title={t("edit")} up={<Link href={`/projects/${id}`}>{found.name}</Link>} />
      <Form action={changeProjectForm} id={id} seen={fingerprint(found)} faultsTitle={t("faultsTitle")}>
        <ProjectFields project={found} currency={homeCurrency} today={await today()} />
        <Button pending={t("saving")}>{t("save")}</Button>
      </Form>
      <Part title={t("statusHistory")}>
        <Table
          caption={t("statusHistory")}
          captionHidden
          least="16rem"
          columns={[
            { key: "status", label: t("status") },
            { key: "from", label: t("from"), figures: true },
          ]}
          rows={[...found.statuses].reverse().map(({ status, from }) => ({
            key: `${from} ${status}`,
            cells: [t(`statuses.${status}`), dayText(from, locale)],
          }))}
        />
      </Part>
    </>
  );
}
