import { getTranslations } from "next-intl/server";
import type { TrendLot } from "../../../lib/show/trend-lots.ts";
import type { TrendPoint } from "../../../lib/show/trend-points.ts";
import { Table } from "../../_ui/table.tsx";

export type TrendTableProps = Readonly<{
  points: readonly TrendPoint[];
  lots: readonly TrendLot[];
  unit: string;
  /** null: each in the currency of its tag. */
  currency: string | null;
  sayLot: (lot: TrendLot) => string;
}>;

/** The figures behind the chart, the newest first. */
export async function TrendTable({ points, lots, unit, currency, sayLot }: TrendTableProps) {
  const t = await getTranslations("materials.page");
  const terms = await getTranslations("terms");
  const rows = [
    ...points.map((point) => ({
      key: point.key,
      on: point.seenOn,
      cells: [
        point.day,
        point.storeName,
        `${terms(point.terms)}${point.beforeImportCharges ? `, ${t("beforeImport")}` : ""}`,
        currency === null ? `${point.currency} ${point.price}` : point.price,
      ],
    })),
    ...lots.map((lot) => ({
      key: lot.id,
      on: lot.orderedOn,
      cells: [lot.day, "", sayLot(lot), currency === null ? `${lot.currency} ${lot.price}` : lot.price],
    })),
  ].sort((a, b) => b.on.localeCompare(a.on));
  return (
    <details>
      <summary>{t("figures")}</summary>
      <Table
        caption={t("figures")}
        captionHidden
        least="30rem"
        columns={[
          { key: "day", label: t("day") },
          { key: "store", label: t("store") },
          { key: "terms", label: t("terms") },
          {
            key: "price",
            label: currency === null ? t("priceAsSeen", { unit }) : t("price", { currency, unit }),
            figures: true,
          },
        ]}
        rows={rows}
      />
    </details>
  );
}
