import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { SaleRowText } from "../../../lib/show/salvage-text.ts";
import { Below } from "../../_ui/money-text.tsx";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";

/** What was sold of a lot so far, beside what was asked for so many. */
export async function SoldSoFar({ sold }: Pick<SaleRowText, "sold">) {
  const t = await getTranslations("salvage");
  if (sold === null) return t("soldNone");
  return (
    <>
      {t("soldOf", { quantity: sold.quantity, amount: sold.amount })}
      <Below>
        {sold.difference === null ? t("askedUnknown") : t("besideAsked", { difference: sold.difference })}
      </Below>
    </>
  );
}

/** Lots up for sale, and those some was sold of. */
export async function SaleTable({ rows, names }: Readonly<{ rows: readonly SaleRowText[]; names: Names }>) {
  const t = await getTranslations("salvage");
  const stock = await getTranslations("stock");
  const units = await unitWords();
  return (
    <Table
      caption={t("forSale")}
      captionHidden
      cards
      least="40rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "free", label: stock("free"), figures: true },
        { key: "each", label: t("asked"), figures: true },
        { key: "all", label: t("askedAll"), figures: true },
        { key: "sold", label: t("soldSoFar"), figures: true },
      ]}
      rows={rows.map((row) => ({
        key: row.lotId,
        cells: [
          <Link key="l" href={`/stock/${row.lotId}`}>
            {names.material(row.materialId)}
          </Link>,
          `${row.free.text} ${units.of(row.unit, row.free.exact)}`,
          row.asked === null ? (
            "–"
          ) : (
            <>
              {row.asked.currency} {row.asked.each}
              <Below>{t("askedSince", { day: row.asked.since })}</Below>
            </>
          ),
          row.asked?.whole ?? "–",
          <SoldSoFar key="s" sold={row.sold} />,
        ],
      }))}
    />
  );
}
