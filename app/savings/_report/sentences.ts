import type { Money } from "../../../lib/money/money.ts";
import { firmness } from "../../../lib/savings/price-sources.ts";
import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { savingTotals } from "../../../lib/savings/saving-totals.ts";
import { savingsReport } from "../../../lib/savings/savings-report.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { gainText } from "../../../lib/show/savings-rows.ts";
import type { ReportWords, Sentence } from "./worded.ts";

/** A sentence of the words file cut at what stands out in it. */
function cut(markup: string): Sentence {
  return markup.split(/<\/?b>/);
}
/** Leaves `<b>` in a sentence, to be cut there. */
const b = (chunks: string) => `<b>${chunks}</b>`;

/** The answer in words: what was saved or lost, both measures, the losses in it, what is set aside. */
export function headline(content: ReportContent, { t, s, locale }: ReportWords): Sentence[] {
  const { rows, currency, asked } = content;
  const { realised: gone, unrealised: held } = savingsReport(rows, currency);
  const lossRows = rows.filter(({ kind, saving }) => kind !== "held" && saving?.amount.isNegative() === true);
  const losses = savingTotals(lossRows, currency).saving;
  const worded = (value: Money) => {
    const gain = gainText(value, locale);
    return gain.side === "even" ? gain.figure : `${gain.figure} ${s(gain.side)}`;
  };
  const { side, size } = gainText(gone.saving, locale);
  const first = { saved: "headlineSaved", lost: "headlineLost", even: "headlineEven" } as const;
  return [
    ...(gone.rows === 0
      ? [cut(t("headlineNone"))]
      : [
          cut(t.markup(first[side], { size, currency, b })),
          cut(t.markup("against", { figure: worded(gone.strictSaving), b })),
        ]),
    ...(lossRows.length === 0
      ? []
      : [cut(t.markup("lossSentence", { count: lossRows.length, size: gainText(losses, locale).size, b }))]),
    ...(held.rows === 0
      ? []
      : [cut(t.markup("heldSentence", { day: dayText(asked.day, locale), figure: worded(held.saving), b }))]),
  ];
}

/** What the report is of: period, project, currency, and the rate it was converted at. */
export function about(content: ReportContent, { t, s, locale }: ReportWords): string[] {
  const { asked, names, currency, homeCurrency, rate, noRateFor } = content;
  const { from, until, projectId, materialId, day } = asked;
  return [
    t("period", {
      whole: from === null ? "yes" : "no",
      from: from === null ? "" : dayText(from, locale),
      until: dayText(until ?? day, locale),
      project: projectId === null ? s("anyProject") : (names[projectId] ?? "–"),
      material: materialId === null ? s("anyMaterial") : (names[materialId] ?? "–"),
      currency,
    }),
    t("asOf", { day: dayText(day, locale) }),
    ...(rate === null
      ? []
      : [
          t("rate", {
            on: dayText(rate.on, locale),
            home: homeCurrency,
            rate: rate.rate.toSignificantDigits(8).toFixed(),
            currency,
            source: rate.source,
          }),
        ]),
    ...(noRateFor === null ? [] : [t("noRate", { currency: noRateFor, home: homeCurrency })]),
  ];
}

/** How firm the figures are: how many prices from where, what rests on drawn ones, what is not known. */
export function firm(content: ReportContent, { t, s, locale }: ReportWords): string[] {
  const { sources, rows, currency } = content;
  const found = firmness(rows, currency);
  const onInterpolated = gainText(found.onInterpolated, locale);
  const [first, last] = [sources[0], sources.at(-1)];
  return [
    t("sourcesText", {
      count: sources.length,
      stores: new Set(sources.map(({ storeId }) => storeId)).size,
      from: first === undefined ? "" : dayText(first.seenOn, locale),
      until: last === undefined ? "" : dayText(last.seenOn, locale),
    }),
    t("sourcesInterpolated", {
      count: found.interpolated,
      figure: `${onInterpolated.figure} ${s(onInterpolated.side)}`,
    }),
    t("sourcesNotKnown", { count: found.notKnown }),
    t("sourcesNotSplit", { count: found.notSplit }),
    t("sourcesBefore", { count: found.beforeCarrying }),
  ].filter((sentence) => sentence !== "");
}

/** The words of a report, each in a sentence or two. */
export function definitions({ t }: ReportWords): { term: string; text: string }[] {
  const terms = ["avoidance", "strict", "discount", "carrying", "losses", "unrealised", "notKnown"] as const;
  return terms.map((term) => ({ term: t(`terms.${term}`), text: t(`terms.${term}Text`) }));
}
