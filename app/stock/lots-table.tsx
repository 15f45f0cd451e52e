import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../lib/show/day-text.ts";
import type { LotMoreText } from "../../lib/show/lot-more.ts";
import type { LotText } from "../../lib/show/lot-text.ts";
import { Age } from "../_ui/age.tsx";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";
import { Gain } from "../savings/gain.tsx";
import { DaysBelow } from "./days-below.tsx";
import { LiesWhere } from "./lies-where.tsx";

type LotsTableProps = Readonly<{
  lots: readonly LotText[];
  more: ReadonlyMap<string, LotMoreText>;
  placeName: (id: string) => string;
  caption: string;
  names: Names;
  currency: string;
}>;

/** What is on hand weighs, with where that was read; not known is said. */
export async function Weighs({ weight }: Readonly<{ weight: LotMoreText["weight"] }>) {
  const t = await getTranslations("places");
  const [part] = weight.parts;
  if (weight.none && weight.unknown.length === 0) return null;
  if (part === undefined) return t("weightNotKnown");
  return `${t("weight", { kilograms: weight.kilograms, pounds: weight.pounds })} (${part.source ?? t(part.bySize ? "bySize" : "noSource")})`;
}

/** Lots with where they lie, what is free, how old they are, what they cost, and what setting them aside has saved so far. */
export async function LotsTable({ lots, more, placeName, caption, names, currency }: LotsTableProps) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
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
      rows={lots.map((lot) => {
        const own = more.get(lot.lotId);
        return {
          key: lot.lotId,
          cells: [
            <>
              <Link href={`/stock/${lot.lotId}`}>{names.material(lot.materialId)}</Link>
              <Below>
                <LiesWhere lying={own?.lying ?? []} placeName={placeName} said={lot.storedAt} />
              </Below>
              {own?.condition ? <Below>{life("conditionOf", { percent: own.condition })}</Below> : null}
              {own ? <DaysBelow days={own.days} /> : null}
            </>,
            lot.onHand === null ? (
              "0"
            ) : (
              <>
                {lot.onHand.text} {units.of(lot.unit, lot.onHand.exact)}
                {lot.onOrder ? <Below>{t("onOrderOf", { quantity: lot.onOrder })}</Below> : null}
                {own ? (
                  <Below>
                    <Weighs weight={own.weight} />
                  </Below>
                ) : null}
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
        };
      })}
    />
  );
}
