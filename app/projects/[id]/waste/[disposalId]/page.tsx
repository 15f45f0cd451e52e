import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { disposal } from "../../../../../lib/data/disposals.ts";
import { valuationOf } from "../../../../../lib/data/facts.ts";
import { materialsOf } from "../../../../../lib/data/materials.ts";
import { project as projectById } from "../../../../../lib/data/projects.ts";
import { fingerprint } from "../../../../_forms/fingerprint.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { Caution } from "../../../../_ui/notice.tsx";
import { PageHead } from "../../../../_ui/page-head.tsx";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../../_workspace/workspace-seen.ts";
import { Changes } from "../../../../stock/[id]/changes.tsx";
import { correctWasteForm } from "../actions.ts";
import { WasteFields } from "../waste-fields.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("waste"))("correctTitle") };
}

type Props = Readonly<{ params: Promise<{ id: string; disposalId: string }> }>;

/** Waste that was recorded, to be corrected, and what was written about it. */
export default async function CorrectWastePage({ params }: Props) {
  const t = await getTranslations("waste");
  const scope = await scopeSeen();
  const { id, disposalId } = await params;
  const projectId = idAsked(id);
  const [project, waste, materials, archived, valuation] = await Promise.all([
    projectById(scope, projectId),
    disposal(scope, idAsked(disposalId)),
    materialsOf(scope),
    materialsOf(scope, { archived: true }),
    valuationOf(scope),
  ]);
  if (project === null || waste?.projectId !== projectId || waste.undoneAt !== null) notFound();
  return (
    <>
      <PageHead
        title={t("correctTitle")}
        up={<Link href={`/projects/${projectId}`}>{project.name}</Link>}
        answer={t(`kinds.${waste.kind}`)}
      />
      <Form action={correctWasteForm} seen={fingerprint(waste)} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="wasteId" value={waste.id} />
        <WasteFields
          materials={[...materials, ...archived.filter((one) => one.id === waste.materialId)]}
          regions={[...valuation.regions.values()]}
          start={{
            kind: waste.kind,
            on: waste.on,
            feeBasis: waste.feeBasis,
            fee: waste.fee.toFixed(),
            least: waste.least?.toFixed() ?? "",
            loads: waste.loads?.toFixed() ?? "",
            hauling: waste.hauling.toFixed(),
            currency: waste.currency,
            taxIncluded: waste.taxIncluded,
            taxRegion: waste.taxRegion ?? "",
            weight: waste.weight?.value.toFixed() ?? "",
            weightUnit: waste.weight?.unit ?? "kilogram",
            materialId: waste.materialId ?? "",
            quantity: waste.quantity?.toFixed() ?? "",
            note: waste.note ?? "",
          }}
        />
        <Button pending={t("saving")} wide>
          {t("save")}
        </Button>
      </Form>
      <Caution>{t("caution")}</Caution>
      <Changes lotId={waste.id} />
    </>
  );
}
