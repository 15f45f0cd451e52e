import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { materialFacts } from "../../../../lib/data/facts.ts";
import { observationsOf } from "../../../../lib/data/observations.ts";
import { materialOf } from "../../../../lib/exposure/exposure-facts.ts";
import { offersOn } from "../../../../lib/prices/offers.ts";
import { PageHead } from "../../../_ui/page-head.tsx";
import { asked } from "../../../_workspace/day-asked.ts";
import { idAsked } from "../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../_workspace/workspace-seen.ts";
import { SeenPrices } from "../../seen-prices.tsx";

export const dynamic = "force-dynamic";
const EACH = 100;

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("materials.page"))("prices") };
}

/** Every price of a material as seen, a hundred at a time. */
export default async function PricesPage({ params, searchParams }: PageProps<"/materials/[id]/prices">) {
  const t = await getTranslations("materials.page");
  const id = idAsked((await params).id);
  const after = await asked(searchParams, "after");
  const day = await today();
  const scope = await scopeSeen();
  const [facts, seen] = await Promise.all([
    materialFacts(scope, id, day),
    observationsOf(scope, id, {
      limit: EACH,
      includeDeleted: true,
      cursor: after === undefined ? null : idAsked(after),
    }),
  ]);
  if (facts === null) notFound();
  const material = materialOf(facts, id);
  return (
    <>
      <PageHead
        title={t("prices")}
        answer={material.name}
        up={<Link href={`/materials/${id}`}>{material.name}</Link>}
      />
      <SeenPrices
        day={day}
        seen={seen.items}
        offers={offersOn(day, facts.observations, material, facts.valuation)}
        storeName={(storeId) => facts.valuation.stores.get(storeId)?.name ?? "–"}
      />
      {seen.next === null ? null : (
        <p>
          <Link href={`/materials/${id}/prices?after=${seen.next}`}>{t("older")}</Link>
        </p>
      )}
    </>
  );
}
