import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../lib/show/day-text.ts";
import type { LotText } from "../../lib/show/lot-text.ts";
import { Age } from "../_ui/age.tsx";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";
import { Gain } from "../savings/gain.tsx";

type LotsTableProps = Readonly<{
  lots: readonly LotText[];
  caption: string;
  names: Names;
  currency: string;
}>;

/** Lots with where they lie, what is free, how old they are, what they cost, and what setting them aside has saved so far. */
export async function LotsTable({ lots, caption, names, currency }: LotsTableProps) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  return (
    <Table
      caption={caption}
      captionHidden
      cards
      least="48rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "there", label: t("onHand"), figures: true },
        { key: "free", label: t("free"), figures: true },
        { key: "aside", label: t("allocated"), figures: true },
        { key: "acquired", label: t("acquired"), figures: true },
        { key: "cost", label: t("cost", { currency }), figures: true },
        { key: "saving", label: t("unrealised"), figures: true },
      ]}
      rows={lots.map((lot) => ({
        key: lot.lotId,
        cells: [
          <>
            <Link href={`/stock/${lot.lotId}`}>{names.material(lot.materialId)}</Link>
            <Below>{lot.storedAt ?? t("nowhere")}</Below>
          </>,
          lot.onHand === null ? (
            "0"
          ) : (
            <>
              {lot.onHand.text} {units.of(lot.unit, lot.onHand.exact)}
              {lot.onOrder ? <Below>{t("onOrderOf", { quantity: lot.onOrder })}</Below> : null}
            </>
          ),
          lot.free?.text ?? "0",
          lot.setAside?.text ?? "0",
          <>
            {dayText(lot.orderedOn, locale)}
            <Below>
              {t(`origins.${lot.origin}`)}, <Age days={lot.ageDays} />
            </Below>
          </>,
          lot.cost === null ? (
            <NotKnown key="c">{t(`unknownCost.${lot.noCost ?? "other"}`)}</NotKnown>
          ) : (
            <>
              {lot.cost}
              {lot.each ? <Below>{t("paidEach", { amount: lot.each })}</Below> : null}
            </>
          ),
          lot.setAside === null ? "–" : <Gain key="g" gain={lot.saving} />,
        ],
      }))}
    />
  );
}
