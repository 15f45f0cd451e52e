import type { Metadata } from "next";
import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { exposureFacts } from "../../../lib/data/facts.ts";
import { observation } from "../../../lib/data/observations.ts";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import { smaller } from "../../../lib/show/free-lots.ts";
import { needsOf } from "../../../lib/show/needs-of.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { EmptyState } from "../../_ui/empty-state.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { LinkButton } from "../../_ui/link-button.tsx";
import { PageHead } from "../../_ui/page-head.tsx";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { recordLotForm } from "../actions.ts";
import { CopiedPrice } from "../copied-price.tsx";
import { lotChoices } from "../lot-choices.ts";
import { LotFields } from "../lot-fields.client.tsx";
import { needChoices } from "../need-choices.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("stock"))("recordTitle") };
}

/** A new lot from a receipt, or at the price of a sighting (?observation=); ?material= and ?need= begin it. */
export default async function NewLotPage({ searchParams }: Readonly<{ searchParams: Query }>) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const day = await today();
  const scope = await scopeSeen();
  const facts = await exposureFacts(scope, day);
  const names = namesOf(facts);
  if (facts.materials.size === 0)
    return (
      <>
        <PageHead title={t("recordTitle")} up={<Link href="/stock">{t("up")}</Link>} />
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
  const seenId = await asked(searchParams, "observation");
  const stored = isId(seenId) ? await observation(scope, seenId) : null;
  const seen = stored === null || stored.deletedAt !== null || stored.amount === null ? null : stored;
  const material = seen?.materialId ?? (await asked(searchParams, "material")) ?? "";
  const needs = await needChoices(needsOf(exposure(day, facts), facts, locale), names);
  const wished = await asked(searchParams, "need");
  const need = needs.find((known) => known.value === wished && known.materialIds.includes(material));
  const open = need ? decimal(need.open) : null;
  const most = seen?.maxQuantity ?? null;
  const quantity = open === null || open.isZero() ? "" : most === null ? open.toFixed() : smaller(open, most);
  return (
    <>
      <PageHead
        title={t("recordTitle")}
        up={<Link href="/stock">{t("up")}</Link>}
        answer={seen ? null : t("recordNote")}
      />
      {seen ? <CopiedPrice observation={seen} names={names} /> : null}
      <Form action={recordLotForm} id={newId()} faultsTitle={t("faultsTitle")}>
        {seen ? <input type="hidden" name="observationId" value={seen.id} /> : null}
        <LotFields
          {...(await lotChoices(facts, locale))}
          needs={needs}
          copied={seen !== null}
          locale={locale}
          start={{
            materialId: facts.materials.has(material) ? material : "",
            needId: need?.value ?? "",
            quantity,
            currency: facts.valuation.homeCurrency,
            today: day,
          }}
        />
        <Button pending={t("saving")}>{t("save")}</Button>
      </Form>
    </>
  );
}
