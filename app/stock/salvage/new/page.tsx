import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { materialsOf } from "../../../../lib/data/materials.ts";
import { projectsOf } from "../../../../lib/data/projects.ts";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { EmptyState } from "../../../_ui/empty-state.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { LinkButton } from "../../../_ui/link-button.tsx";
import { Caution } from "../../../_ui/notice.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { scopeSeen, today, workspaceSeen } from "../../../_workspace/workspace-seen.ts";
import { countInForm } from "../actions.ts";
import { salvageChoices } from "../salvage-choices.ts";
import { SalvageFields } from "../salvage-fields.client.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("salvage"))("countIn") };
}

/** Salvage to be counted in; ?material= begins it. */
export default async function CountInPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("salvage");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const { homeCurrency } = await workspaceSeen();
  const [materials, projects] = await Promise.all([materialsOf(scope), projectsOf(scope)]);
  const wished = await asked(searchParams, "material");
  const up = <Link href="/stock/salvage">{t("up")}</Link>;
  if (materials.length === 0)
    return (
      <>
        <PageHead title={t("countIn")} up={up} />
        <EmptyState
          title={t("noMaterialsTitle")}
          action={
            <LinkButton kind="main" href="/materials/new">
              {t("addMaterial")}
            </LinkButton>
          }
        >
          {t("noMaterialsText")}
        </EmptyState>
      </>
    );
  return (
    <>
      <PageHead title={t("countIn")} up={up} answer={t("countInNote")} />
      <Form action={countInForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <SalvageFields
          {...(await salvageChoices(materials, projects, homeCurrency, locale))}
          fixed={null}
          start={{
            materialId: materials.find(({ id }) => id === wished)?.id ?? "",
            reclaimedFrom: "",
            projectId: "",
            hours: "",
            hourlyRate: "",
            hauling: "",
            purchasePrice: "",
            currency: homeCurrency,
            condition: "",
            tally: [],
            quantity: "",
            on: await today(),
            note: "",
          }}
        />
        <Button pending={t("saving")} wide>
          {t("save")}
        </Button>
      </Form>
      <Caution>{t("caution")}</Caution>
      <Caution>{t("cautionOld")}</Caution>
    </>
  );
}
