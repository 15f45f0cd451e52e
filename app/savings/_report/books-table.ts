import type { BookCost, BookCosts } from "../../../lib/savings/book-costs.ts";
import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { countCell, moneyCell } from "./cells.ts";
import type { ReportWords, WordedTable } from "./worded.ts";

const FORMULAS = [
  ["byLot", "bookByLot"],
  ["fifo", "bookFifo"],
  ["average", "bookAverage"],
] as const;

/** Stock by three cost formulas, a line for each material that was ever in it; null: this report has none. */
export function booksTable(content: ReportContent, words: ReportWords): WordedTable | null {
  const { t, s, locale } = words;
  const { books, names, homeCurrency } = content;
  if (books.length === 0) return null;
  const cost = (one: BookCosts, formula: (typeof FORMULAS)[number][0], of: keyof BookCost) =>
    moneyCell(one[formula]?.[of] ?? null, words);
  const named = [...books].sort((a, b) =>
    (names[a.materialId] ?? "").localeCompare(names[b.materialId] ?? ""),
  );
  return {
    key: "books",
    title: t("books"),
    note: t("booksNote", { currency: homeCurrency }),
    columns: [
      { key: "material", label: s("material"), figures: false },
      { key: "left", label: t("bookLeft"), figures: true },
      ...FORMULAS.map(([key, word]) => ({
        key: `left-${key}`,
        label: t("bookIssued", { formula: t(word) }),
        figures: true,
      })),
      { key: "there", label: t("bookThere"), figures: true },
      ...FORMULAS.map(([key, word]) => ({
        key: `there-${key}`,
        label: t("bookStock", { formula: t(word) }),
        figures: true,
      })),
    ],
    rows: named.map((one) => ({
      key: one.materialId,
      cells: [
        { text: names[one.materialId] ?? "–" },
        countCell(countText(one.issued, locale)),
        ...FORMULAS.map(([key]) => cost(one, key, "issued")),
        countCell(countText(one.left, locale)),
        ...FORMULAS.map(([key]) => cost(one, key, "left")),
      ],
    })),
    foot: null,
  };
}
