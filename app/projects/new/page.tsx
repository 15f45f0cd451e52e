import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { today, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { addProjectForm } from "../actions.ts";
import { ProjectFields } from "../project-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("projects"))("newTitle") };
}

/** A new project. */
export default async function NewProjectPage() {
  const t = await getTranslations("projects");
  const { homeCurrency } = await workspaceSeen();
  return (
    <>
      <PageHead title={t("newTitle")} up={<Link href="/projects">{t("up")}</Link>} />
      <Form action={addProjectForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <ProjectFields project={null} currency={homeCurrency} today={await today()} />
        <Button pending={t("saving")}>{t("create")}</Button>
      </Form>
    </>
  );
}
