import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { valuationOf } from "../../../../lib/data/facts.ts";
import { materialsOf } from "../../../../lib/data/materials.ts";
import { project as projectById } from "../../../../lib/data/projects.ts";
import { newId } from "../../../_forms/new-id.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Caution } from "../../../_ui/notice.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { addWasteForm } from "./actions.ts";
import { WasteFields } from "./waste-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("waste"))("record") };
}

/** Waste a project got rid of, to be recorded. */
export default async function RecordWastePage({ params }: Readonly<{ params: Promise<{ id: string }> }>) {
  const t = await getTranslations("waste");
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const [project, materials, valuation] = await Promise.all([
    projectById(scope, id),
    materialsOf(scope),
    valuationOf(scope),
  ]);
  if (project === null) notFound();
  return (
    <>
      <PageHead
        title={t("record")}
        up={<Link href={`/projects/${id}`}>{project.name}</Link>}
        answer={t("recordNote")}
      />
      <Form action={addWasteForm} id={newId()} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="projectId" value={id} />
        <WasteFields
          materials={materials}
          regions={[...valuation.regions.values()]}
          start={{
            kind: "mixed",
            on: valuation.today,
            feeBasis: "flat",
            fee: "",
            least: "",
            loads: "",
            hauling: "",
            currency: valuation.homeCurrency,
            taxIncluded: false,
            taxRegion: valuation.taxRegion,
            weight: "",
            weightUnit: "kilogram",
            materialId: "",
            quantity: "",
            note: "",
          }}
        />
        <Button pending={t("saving")} wide>
          {t("save")}
        </Button>
      </Form>
      <Caution>{t("caution")}</Caution>
    </>
  );
}
