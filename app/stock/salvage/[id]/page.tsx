import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { material as materialById } from "../../../../lib/data/materials.ts";
import { projectsOf } from "../../../../lib/data/projects.ts";
import { salvage } from "../../../../lib/data/salvage.ts";
import { percentTyped } from "../../../../lib/show/share-typed.ts";
import { fingerprint } from "../../../_forms/fingerprint.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { Caution } from "../../../_ui/notice.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { Changes } from "../../[id]/changes.tsx";
import { correctForm } from "../actions.ts";
import { salvageChoices } from "../salvage-choices.ts";
import { SalvageFields } from "../salvage-fields.client.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("salvage"))("correctTitle") };
}

/** Salvage counted in, to be corrected: all of it as it stands, and what was written about it. */
export default async function CorrectSalvagePage({ params }: Readonly<{ params: Promise<{ id: string }> }>) {
  const t = await getTranslations("salvage");
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const [counted, projects] = await Promise.all([salvage(scope, id), projectsOf(scope)]);
  const material = counted === null ? null : await materialById(scope, counted.lot.materialId);
  if (counted === null || material === null || counted.lot.deletedAt !== null) notFound();
  const { lot, detail } = counted;
  const { materials, ...choices } = await salvageChoices(
    [material],
    projects,
    detail.currency,
    await getLocale(),
  );
  return (
    <>
      <PageHead
        title={material.name}
        up={<Link href={`/stock/${id}`}>{t("toLot")}</Link>}
        answer={t("correctNote")}
      />
      <Form action={correctForm} seen={fingerprint(counted)} faultsTitle={t("faultsTitle")}>
        <input type="hidden" name="lotId" value={id} />
        <SalvageFields
          {...choices}
          materials={materials}
          fixed={materials[0] ?? null}
          start={{
            materialId: material.id,
            reclaimedFrom: detail.reclaimedFrom ?? "",
            projectId: detail.projectId ?? "",
            hours: detail.hours.toFixed(),
            hourlyRate: detail.hourlyRate.toFixed(),
            hauling: detail.hauling.toFixed(),
            purchasePrice: detail.purchasePrice.toFixed(),
            currency: detail.currency,
            condition: percentTyped(lot.condition),
            tally: detail.tally.map(({ pieces, length }) => ({
              pieces: pieces.toFixed(),
              length: length ?? "",
            })),
            quantity: detail.tally.length > 0 ? "" : lot.quantity.toFixed(),
            on: lot.orderedOn,
            note: lot.note ?? "",
          }}
        />
        <Button pending={t("saving")} wide>
          {t("correct")}
        </Button>
      </Form>
      <Caution>{t("caution")}</Caution>
      <Changes lotId={id} />
    </>
  );
}
