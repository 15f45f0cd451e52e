import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { ONE } from "../../../lib/decimal.ts";
import type { Material } from "../../../lib/materials/material.ts";
import type { OffersOfDay } from "../../../lib/prices/offers.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import { comparisonBasis } from "../../../lib/show/comparison-basis.ts";
import { type OfferRow, offerRow } from "../../../lib/show/offer-row.ts";
import { Age } from "../../_ui/age.tsx";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { basisWords } from "../../_words/basis-words.ts";
import { unitWords } from "../../_words/unit-words.ts";

type OffersProps = Readonly<{
  title: string;
  day: LocalDate;
  material: Material;
  offers: OffersOfDay;
  valuation: Valuation;
}>;

/** Offers in force on the day, the cheapest first: all in, how old, for how many, how long, and what else is charged. */
export async function Offers({ title, day, material, offers, valuation }: OffersProps) {
  const t = await getTranslations("materials.page");
  const terms = await getTranslations("terms");
  const locale = await getLocale();
  const units = await unitWords();
  const rows = offers.offers.map((offer) => offerRow(offer, valuation, locale));
  if (rows.length === 0) return <Part title={title}>{t("offersNone")}</Part>;
  const basis = comparisonBasis({ quantity: ONE, unit: material.purchaseUnit }, valuation, day, locale);
  const note = `${(await basisWords())(basis)} ${t("offersNote")}`;
  const limits = ({ minimum, maximum, packSize, unit }: OfferRow) =>
    [
      minimum && t("minimum", { quantity: `${minimum.text} ${units.of(unit, minimum.exact)}` }),
      maximum && t("maximum", { quantity: `${maximum.text} ${units.of(unit, maximum.exact)}` }),
      packSize && t("packs", { quantity: packSize.text }),
    ].filter((words) => words !== null);
  return (
    <Part title={title} note={note}>
      <Table
        caption={title}
        captionHidden
        cards
        least="44rem"
        columns={[
          { key: "store", label: t("store") },
          { key: "terms", label: t("terms") },
          { key: "allIn", label: t("allIn"), figures: true },
          { key: "before", label: t("beforeTax"), figures: true },
          { key: "seen", label: t("seen") },
          { key: "limits", label: t("quantity") },
          { key: "holds", label: t("holds") },
        ]}
        rows={rows.map((row) => ({
          key: row.id,
          cells: [
            row.storeName,
            <span key="terms">
              {terms(row.terms)}
              {row.beforeImportCharges ? <Below>{t("beforeImport")}</Below> : null}
            </span>,
            <span key="price">
              {row.price}
              {row.charges.map((charge) => (
                <Below key={charge.name}>
                  {t("plusOrder", { name: charge.name, amount: charge.amount })}
                  {charge.freeFrom === null ? "" : `, ${t("freeFrom", { amount: charge.freeFrom })}`}
                </Below>
              ))}
            </span>,
            row.beforeTax,
            <span key="seen">
              <Age days={row.ageDays} stale={row.stale} />
              {row.staleRate ? <Below>{t("staleRate")}</Below> : null}
            </span>,
            limits(row).join(", "),
            row.lapses ?? t("holdsOpen"),
          ],
        }))}
      />
    </Part>
  );
}
