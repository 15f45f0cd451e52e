import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { materialsOf } from "../../../../../lib/data/materials.ts";
import { project as projectById } from "../../../../../lib/data/projects.ts";
import { newId } from "../../../../_forms/new-id.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { EmptyState } from "../../../../_ui/empty-state.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { LinkButton } from "../../../../_ui/link-button.tsx";
import { Caution } from "../../../../_ui/notice.tsx";
import { PageHead } from "../../../../_ui/page-head.tsx";
import { asked, type Query } from "../../../../_workspace/day-asked.ts";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, workspaceSeen } from "../../../../_workspace/workspace-seen.ts";
import { addNeedForm } from "../../../need-actions.ts";
import { NeedFields } from "../../../need-fields.client.tsx";
import { needMaterials, needWords } from "../../../need-words.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("projects"))("addNeedTitle") };
}

const NOTHING_YET = {
  quantity: "",
  unit: "",
  wastePercent: "",
  neededBy: "",
  budgetUnitPrice: "",
  acceptsUsed: false,
  alternatives: [],
};

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

/** One more thing a project needs. */
export default async function NewNeedPage({ params, searchParams }: Props) {
  const t = await getTranslations("projects");
  const id = idAsked((await params).id);
  const scope = await scopeSeen();
  const [project, materials, { homeCurrency }] = await Promise.all([
    projectById(scope, id),
    materialsOf(scope),
    workspaceSeen(),
  ]);
  if (project === null) notFound();
  const choices = await needMaterials(materials);
  const wished = await asked(searchParams, "material");
  return (
    <>
      <PageHead title={t("addNeedTitle")} up={<Link href={`/projects/${id}`}>{project.name}</Link>} />
      {materials.length === 0 ? (
        <EmptyState
          title={t("noMaterials")}
          action={
            <LinkButton kind="main" href="/materials/new">
              {t("toMaterials")}
            </LinkButton>
          }
        >
          {t("noMaterialsText")}
        </EmptyState>
      ) : (
        <>
          <Form action={addNeedForm} id={newId()} faultsTitle={t("faultsTitle")}>
            <input type="hidden" name="projectId" value={id} />
            <NeedFields
              materials={choices}
              fixed={null}
              start={NOTHING_YET}
              words={await needWords(homeCurrency)}
              locale={await getLocale()}
              chosen={choices.some((choice) => choice.value === wished) ? (wished ?? "") : ""}
            />
            <Button pending={t("saving")}>{t("add")}</Button>
          </Form>
          <p>
            <Link href="/materials/new">{t("notListed")}</Link>
          </p>
          <Caution>{t("caution")}</Caution>
        </>
      )}
    </>
  );
}
