import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { moneyText } from "../../../lib/show/money-text.ts";
import { dayCell, numberCell } from "./cells.ts";
import type { ReportWords, WordedTable } from "./worded.ts";

/** Every shelf price a going price rests on, as it was seen. */
export function sourcesTable(content: ReportContent, words: ReportWords): WordedTable {
  const { t, s, units, locale } = words;
  const { sources, names } = content;
  const asSeen = ({ amount, per }: (typeof sources)[number]) => {
    if (amount === null) return "–";
    const quantity = countText(per.quantity, locale);
    return t("asSeenText", {
      amount: moneyText(amount, locale),
      currency: amount.currency,
      quantity: quantity.text,
      unit: units.of(per.unit, quantity.exact),
    });
  };
  return {
    key: "sources",
    title: t("sources"),
    note: null,
    columns: [
      { key: "material", label: s("material"), figures: false },
      { key: "store", label: t("store"), figures: false },
      { key: "seen", label: t("seenOn"), figures: false },
      { key: "price", label: t("asSeen"), figures: true },
      { key: "rows", label: t("behind"), figures: true },
    ],
    rows: sources.map((source) => ({
      key: source.observationId,
      cells: [
        { text: names[source.materialId] ?? "–" },
        { text: names[source.storeId] ?? "–" },
        dayCell(source.seenOn, words),
        { text: asSeen(source), under: [source.taxIncluded ? t("withTax") : t("beforeTax")] },
        numberCell(source.rows),
      ],
    })),
    foot: null,
  };
}
