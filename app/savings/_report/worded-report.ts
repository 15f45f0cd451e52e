import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { SAVING_VIEWS } from "../../../lib/savings/savings-by.ts";
import { savingsReport } from "../../../lib/savings/savings-report.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { unitWords } from "../../_words/unit-words.ts";
import { booksTable } from "./books-table.ts";
import { breakdownTable } from "./breakdown-table.ts";
import { numberCell, totalCell } from "./cells.ts";
import { picture } from "./picture.ts";
import { rowsTable } from "./rows-table.ts";
import { about, definitions, firm, headline } from "./sentences.ts";
import { sourcesTable } from "./sources-table.ts";
import { viewTable } from "./view-table.ts";
import type { ReportWords, WordedReport } from "./worded.ts";

/** The words of the request. */
export async function reportWords(): Promise<ReportWords> {
  return {
    t: await getTranslations("savingsReport"),
    s: await getTranslations("savings"),
    units: await unitWords(),
    locale: await getLocale(),
  };
}

/** A report in words, ready for a page or a file. madeOn: the day it stands under. */
export function wordedReport(content: ReportContent, words: ReportWords, madeOn: LocalDate): WordedReport {
  const { t } = words;
  const { rows, currency } = content;
  const { realised: gone, unrealised: held } = savingsReport(rows, currency);
  return {
    title: t("title"),
    about: about(content, words),
    headline: headline(content, words),
    key: [
      { key: "realised", label: t("keyRealised"), value: totalCell(gone, "saving", words), note: null },
      {
        key: "strict",
        label: t("keyStrict"),
        value: totalCell(gone, "strictSaving", words),
        note: t("keyStrictNote", { count: gone.strictNotKnown }),
      },
      { key: "held", label: t("keyHeld"), value: totalCell(held, "saving", words), note: null },
      {
        key: "not-known",
        label: t("keyNotKnown"),
        value: numberCell(gone.notKnown + held.notKnown),
        note: t("keyNotKnownNote", { count: gone.notKnown + held.notKnown === 0 ? 0 : rows.length }),
      },
    ],
    ...picture(content, words),
    breakdown: breakdownTable(content, words),
    views: SAVING_VIEWS.map((view) => viewTable(view, content, words)),
    rows: rowsTable(content, words),
    sources: sourcesTable(content, words),
    books: booksTable(content, words),
    firm: firm(content, words),
    definitions: definitions(words),
    closing: [t("notAdvice"), t("madeOn", { day: dayText(madeOn, words.locale) })],
  };
}
