import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import type { PlaceContents } from "../../../../lib/data/place-contents.ts";
import { dayText } from "../../../../lib/show/day-text.ts";
import { lotDays } from "../../../../lib/show/lot-days.ts";
import { quantityText } from "../../../../lib/show/money-text.ts";
import { weightText } from "../../../../lib/show/weight-text.ts";
import type { Lot } from "../../../../lib/stock/lot.ts";
import { Below, NotKnown } from "../../../_ui/money-text.tsx";
import { Part } from "../../../_ui/page-head.tsx";
import { Table } from "../../../_ui/table.tsx";
import { unitWords } from "../../../_words/unit-words.ts";
import { DaysBelow } from "../../days-below.tsx";

type ContentsProps = Readonly<{
  loads: PlaceContents["loads"];
  lots: ReadonlyMap<string, Lot>;
  day: LocalDate;
}>;

/** What lies in a place, lot by lot: how much, since when, and what it weighs with where that was read. */
export async function Contents({ loads, lots, day }: ContentsProps) {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  if (loads.length === 0) return null;
  return (
    <Part title={t("contents")} note={t("weightCaution")}>
      <Table
        caption={t("contents")}
        captionHidden
        cards
        least="40rem"
        columns={[
          { key: "material", label: stock("material") },
          { key: "there", label: t("there"), figures: true },
          { key: "acquired", label: stock("acquired"), figures: true },
          { key: "weight", label: t("weighsShort"), figures: true },
        ]}
        rows={loads.map(({ lotId, material, quantity }) => {
          const lot = lots.get(lotId);
          const { kilograms, pounds, parts, none } = weightText([{ material, quantity }], locale);
          return {
            key: lotId,
            cells: [
              <>
                <Link href={`/stock/${lotId}`}>{material.name}</Link>
                {lot ? <DaysBelow days={lotDays(lot, material, day, false)} /> : null}
              </>,
              `${quantityText(quantity, locale)} ${units.of(material.purchaseUnit, quantity.toFixed())}`,
              lot ? (
                <>
                  {dayText(lot.orderedOn, locale)}
                  <Below>{stock(`origins.${lot.origin}`)}</Below>
                </>
              ) : (
                "–"
              ),
              none ? (
                <NotKnown key="w">{t("notKnown")}</NotKnown>
              ) : (
                <>
                  {t("weight", { kilograms, pounds })}
                  <Below>{parts[0]?.source ?? t(parts[0]?.bySize ? "bySize" : "noSource")}</Below>
                </>
              ),
            ],
          };
        })}
      />
    </Part>
  );
}
