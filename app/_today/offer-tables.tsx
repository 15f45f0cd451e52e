import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { WorkspaceExposure } from "../../lib/exposure/exposure-figures.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import { comparisonBasis } from "../../lib/show/comparison-basis.ts";
import { dayText } from "../../lib/show/day-text.ts";
import {
  aboutToLapse,
  type Leaning,
  leanings,
  leaningText,
  staleUnderMoney,
} from "../../lib/show/offers-under-money.ts";
import { Age } from "../_ui/age.tsx";
import { Below } from "../_ui/money-text.tsx";
import { Part } from "../_ui/page-head.tsx";
import { Table } from "../_ui/table.tsx";
import { basisWords } from "../_words/basis-words.ts";
import { unitWords } from "../_words/unit-words.ts";
import type { Names } from "../_workspace/names-of.ts";

type TableOf = Readonly<{
  title: string;
  note: string;
  found: readonly Leaning[];
  exposure: WorkspaceExposure;
  names: Names;
  when: "seen" | "lapses";
}>;

async function OfferTable({ title, note, found, exposure, names, when }: TableOf) {
  const t = await getTranslations("today");
  const locale = await getLocale();
  const units = await unitWords();
  const rows = found.map((leaning) => leaningText(leaning, exposure.day, locale));
  return (
    <Part title={title} note={note}>
      <Table
        caption={title}
        captionHidden
        cards
        least="38rem"
        columns={[
          { key: "material", label: t("material") },
          { key: "store", label: t("store") },
          { key: "each", label: t("each"), figures: true },
          { key: "when", label: t(when), figures: true },
          { key: "quantity", label: t("quantity"), figures: true },
          { key: "money", label: t("money"), figures: true },
        ]}
        rows={rows.map((row) => ({
          key: row.observationId,
          cells: [
            <Link key="m" href={`/materials/${row.materialId}`}>
              {names.material(row.materialId)}
            </Link>,
            names.store(row.storeId),
            row.each,
            when === "seen" ? (
              <Age key="age" days={row.ageDays} stale />
            ) : (
              <>
                {row.lapsesOn ? dayText(row.lapsesOn, locale) : null}
                <Below>{t("daysLeft", { days: row.daysLeft ?? 0 })}</Below>
              </>
            ),
            `${row.quantity} ${units.of(row.unit, row.quantityExact)}`,
            row.money,
          ],
        }))}
      />
    </Part>
  );
}

/** Offers that the cost to finish leans on: those about to lapse, and those gone stale. Nothing when there are none. */
export async function OfferTables({
  exposure,
  names,
  valuation,
}: Readonly<{ exposure: WorkspaceExposure; names: Names; valuation: Valuation }>) {
  const t = await getTranslations("today");
  const all = leanings(exposure);
  const lapsing = aboutToLapse(all, exposure.day);
  const stale = staleUnderMoney(all);
  const basis = comparisonBasis("open", valuation, exposure.day, await getLocale());
  const said = (await basisWords())(basis);
  const shared = { exposure, names };
  return (
    <>
      {lapsing.length > 0 ? (
        <OfferTable
          title={t("lapsingTitle")}
          note={`${t("lapsingNote")} ${said}`}
          found={lapsing}
          when="lapses"
          {...shared}
        />
      ) : null}
      {stale.length > 0 ? (
        <OfferTable
          title={t("staleTitle")}
          note={`${t("staleNote")} ${said}`}
          found={stale}
          when="seen"
          {...shared}
        />
      ) : null}
    </>
  );
}
