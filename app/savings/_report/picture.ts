import { add, money } from "../../../lib/money/money.ts";
import type { ReportContent } from "../../../lib/savings/report-content.ts";
import { savingsThroughTime } from "../../../lib/savings/savings-through-time.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { moneyText } from "../../../lib/show/money-text.ts";
import { NARROW_BOX, savingsDrawing, WIDE_BOX } from "../../../lib/show/savings-drawing.ts";
import { savingsTimeRows } from "../../../lib/show/savings-time-rows.ts";
import { dayCell } from "./cells.ts";
import type { ReportWords, WordedReport, WordedTable } from "./worded.ts";

function timeTable(rows: ReturnType<typeof savingsTimeRows>, words: ReportWords): WordedTable {
  const { t, s } = words;
  return {
    key: "time",
    title: t("pictureTable"),
    note: null,
    columns: [
      { key: "day", label: t("timeDay"), figures: false },
      { key: "saved", label: t("timeSaved"), figures: true },
      { key: "lost", label: t("timeLost"), figures: true },
      { key: "net", label: t("timeNet"), figures: true },
      { key: "held", label: t("timeHeld"), figures: true },
    ],
    rows: rows.map(({ on, saved, lost, net, unrealised }) => ({
      key: on,
      cells: [
        dayCell(on, words),
        { text: saved },
        { text: lost },
        { text: net },
        { text: unrealised ?? s("notKnown") },
      ],
    })),
    foot: null,
  };
}

/** The picture of a report in both sizes, its text and legend, and its figures as a table. */
export function picture(
  content: ReportContent,
  words: ReportWords,
): Pick<WordedReport, "picture" | "drawings" | "time"> {
  const { t, locale } = words;
  const { rows, marks, currency, asked } = content;
  const points = savingsThroughTime(rows, currency);
  const draw = (box: typeof WIDE_BOX) => savingsDrawing(points, marks, asked.day, box, locale);
  const [wide, narrow] = [draw(WIDE_BOX), draw(NARROW_BOX)];
  const last = points.at(-1);
  const nothing = money(0, currency);
  const figure = (value = nothing) => moneyText(value, locale, { signed: true });
  const held = marks.at(-1)?.unrealised ?? nothing;
  const all = add(held, last?.net ?? nothing);
  const by = {
    saved: figure(last?.saved),
    lost: figure(last?.lost),
    net: figure(last?.net),
    all: figure(all),
  };
  return {
    picture: {
      title: t("picture"),
      note: t("pictureNote", { currency }),
      text: t("pictureText", { day: dayText(asked.day, locale), ...by }),
      legend: [
        { series: "saved", label: t("legendSaved"), figure: by.saved },
        { series: "lost", label: t("legendLost"), figure: by.lost },
        { series: "net", label: t("legendNet"), figure: by.net },
        { series: "held", label: t("legendHeld"), figure: by.all },
      ],
    },
    drawings: wide === null || narrow === null ? null : { wide, narrow },
    time: timeTable(savingsTimeRows(points, marks, currency, locale), words),
  };
}
