import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { valuationOf } from "../../../../../lib/data/facts.ts";
import { material as materialById } from "../../../../../lib/data/materials.ts";
import { correctionsOf, observation } from "../../../../../lib/data/observations.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import { fingerprint } from "../../../../_forms/fingerprint.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { PageHead, Part } from "../../../../_ui/page-head.tsx";
import { idAsked } from "../../../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";
import { CorrectionFields } from "../../../correction-fields.tsx";
import { EarlierValues } from "../../../earlier-values.tsx";
import { bringPriceBack, correctPriceForm, takePriceBack } from "../../../price-actions.ts";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("materials.correct"))("title") };
}

/** One price as seen: correct it, take it back, and what it said before. */
export default async function PricePage({ params }: PageProps<"/materials/[id]/prices/[price]">) {
  const t = await getTranslations("materials.correct");
  const page = await getTranslations("materials.page");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const { id: materialId, price } = await params;
  const scope = await scopeSeen();
  const [seen, material, valuation, earlier] = await Promise.all([
    observation(scope, idAsked(price)),
    materialById(scope, idAsked(materialId)),
    valuationOf(scope),
    correctionsOf(scope, idAsked(price)),
  ]);
  if (seen === null || material === null || seen.materialId !== material.id) notFound();
  const store = valuation.stores.get(seen.storeId)?.name ?? "–";
  const gone = seen.deletedAt !== null;
  return (
    <>
      <PageHead
        title={t(gone ? "titleDeleted" : "title")}
        answer={t("answer", { material: material.name, store, day: dayText(seen.seenOn, locale) })}
        up={<Link href={`/materials/${material.id}`}>{material.name}</Link>}
      />
      {gone ? null : (
        <>
          <p>{t("why")}</p>
          <Form action={correctPriceForm} seen={fingerprint(seen)} faultsTitle={ui("faultsTitle")}>
            <input type="hidden" name="priceId" value={seen.id} />
            <CorrectionFields seen={seen} material={material} valuation={valuation} />
            <Button pending={ui("saving")}>{t("save")}</Button>
          </Form>
        </>
      )}
      <Part title={page(gone ? "undelete" : "delete")} note={t(gone ? "undeleteText" : "deleteText")}>
        <form action={gone ? bringPriceBack : takePriceBack}>
          <input type="hidden" name="id" value={seen.id} />
          <Button kind="plain">{page(gone ? "undelete" : "delete")}</Button>
        </form>
      </Part>
      <EarlierValues earlier={earlier} day={await today()} />
    </>
  );
}
