import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { valuationOf } from "../../../../lib/data/facts.ts";
import { material as materialById } from "../../../../lib/data/materials.ts";
import { fingerprint } from "../../../_forms/fingerprint.ts";
import { Button } from "../../../_ui/button.client.tsx";
import { Form } from "../../../_ui/form.client.tsx";
import { PageHead } from "../../../_ui/page-head.tsx";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";
import { changeMaterialForm } from "../../actions.ts";
import { MaterialFields } from "../../material-fields.tsx";
import { taxesToChoose } from "../../tax-names.ts";

export const dynamic = "force-dynamic";

async function asked(params: Promise<{ id: string }>) {
  const found = await materialById(await scopeSeen(), idAsked((await params).id));
  if (found === null) notFound();
  return found;
}

export async function generateMetadata({ params }: PageProps<"/materials/[id]/edit">): Promise<Metadata> {
  const t = await getTranslations("materials.form");
  return { title: t("changeTitle", { name: (await asked(params)).name }) };
}

/** Changing a material. */
export default async function EditMaterialPage({ params }: PageProps<"/materials/[id]/edit">) {
  const t = await getTranslations("materials");
  const ui = await getTranslations("ui");
  const material = await asked(params);
  const valuation = await valuationOf(await scopeSeen());
  return (
    <>
      <PageHead
        title={t("form.changeTitle", { name: material.name })}
        up={<Link href={`/materials/${material.id}`}>{material.name}</Link>}
      />
      <Form action={changeMaterialForm} seen={fingerprint(material)} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="materialId" value={material.id} />
        <MaterialFields
          material={material}
          category={material.category}
          recheckDays={valuation.recheckDays}
          taxes={taxesToChoose(valuation, material.exemptFrom)}
        />
        <Button pending={ui("saving")}>{t("form.save")}</Button>
      </Form>
    </>
  );
}
