import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { valuationOf } from "../../../lib/data/facts.ts";
import { catalogued } from "../../../lib/materials/catalogue/catalogue.ts";
import { entryOf } from "../../../lib/materials/catalogue/entry.ts";
import { CATEGORIES } from "../../../lib/materials/material.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { addMaterialForm } from "../actions.ts";
import { MaterialFields } from "../material-fields.tsx";
import { taxesToChoose } from "../tax-names.ts";
import { WhereToStart } from "./where-to-start.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("materials.form"))("pickTitle") };
}

/**
 * A new material: one of the catalogue to make one's own, or its kind first, because that decides which sizes are asked
 * for; then the form.
 */
export default async function NewMaterialPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("materials.form");
  const c = await getTranslations("categories");
  const ui = await getTranslations("ui");
  const picked = catalogued((await asked(searchParams, "from")) ?? "");
  const wanted = await asked(searchParams, "category");
  const category = picked?.category ?? CATEGORIES.find((one) => one === wanted);
  if (category === undefined) return <WhereToStart />;
  const valuation = await valuationOf(await scopeSeen());
  const up =
    picked === null ? (
      <Link href="/materials/new">{t("otherKind")}</Link>
    ) : (
      <Link href="/materials/new/catalogue">{t("catalogueTitle")}</Link>
    );
  return (
    <>
      <PageHead
        title={t("pickTitle")}
        answer={picked === null ? c(category) : t("picked", { category: c(category) })}
        up={up}
      />
      <Form action={addMaterialForm} id={newId()} faultsTitle={ui("faultsTitle")}>
        {picked === null ? null : <input type="hidden" name="catalogue" value={picked.key} />}
        <MaterialFields
          material={picked === null ? null : entryOf(picked)}
          category={category}
          recheckDays={valuation.recheckDays}
          taxes={taxesToChoose(valuation, [])}
        />
        <Button pending={ui("saving")}>{t("save")}</Button>
      </Form>
    </>
  );
}
