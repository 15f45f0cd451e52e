import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { valuationOf } from "../../../lib/data/facts.ts";
import { CATEGORIES } from "../../../lib/materials/material.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { addMaterialForm } from "../actions.ts";
import { MaterialFields } from "../material-fields.tsx";
import style from "../materials.module.css";
import { taxesToChoose } from "../tax-names.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("materials.form"))("pickTitle") };
}

/** A new material: first its kind, because that decides which sizes are asked for; then the form. */
export default async function NewMaterialPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("materials");
  const c = await getTranslations("categories");
  const ui = await getTranslations("ui");
  const wanted = await asked(searchParams, "category");
  const category = CATEGORIES.find((one) => one === wanted);
  if (category === undefined)
    return (
      <>
        <PageHead
          title={t("form.pickTitle")}
          answer={t("form.pick")}
          up={<Link href="/materials">{t("back")}</Link>}
        />
        <nav className={style.kinds} aria-label={t("form.pick")}>
          {CATEGORIES.map((one) => (
            <Link key={one} href={`/materials/new?category=${one}`}>
              {c(one)}
            </Link>
          ))}
        </nav>
      </>
    );
  const valuation = await valuationOf(await scopeSeen());
  return (
    <>
      <PageHead
        title={t("form.pickTitle")}
        answer={c(category)}
        up={<Link href="/materials/new">{t("form.otherKind")}</Link>}
      />
      <Form action={addMaterialForm} id={newId()} faultsTitle={ui("faultsTitle")}>
        <MaterialFields
          material={null}
          category={category}
          recheckDays={valuation.recheckDays}
          taxes={taxesToChoose(valuation, [])}
        />
        <Button pending={ui("saving")}>{t("form.save")}</Button>
      </Form>
    </>
  );
}
