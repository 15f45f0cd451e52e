import { createElement, Fragment } from "react";
import { More } from "../../_ui/more.tsx";
import { KeyFigures, Part } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";
import { PictureFigure } from "./picture-figure.tsx";
import style from "./report.module.css";
import type { Sentence, WordedReport } from "./worded.ts";
import { WordedTable } from "./worded-table.tsx";

/** A sentence with its figures set apart. */
export function Said({ sentence }: Readonly<{ sentence: Sentence }>) {
  return createElement(
    Fragment,
    null,
    ...sentence.map((part, index) => (index % 2 === 1 ? said(part) : part)),
  );
}

type ViewProps = Readonly<{ report: WordedReport; whyPath: string | null; none: string; meaning: string }>;

/** A whole report on a page: one sheet to read, then the tables it rests on. */
export function ReportView({ report, whyPath, none, meaning }: ViewProps) {
  const { picture, drawings, breakdown, time, views, rows, sources, books } = report;
  return (
    <div className={style.report}>
      <KeyFigures
        figures={report.key.map(({ key, label, value, note }) => ({
          key,
          label,
          value: value.text,
          note: [...(value.under ?? []), ...(note === null ? [] : [note])].join(", "),
        }))}
      />
      <Part title={picture.title} note={picture.note}>
        {drawings === null ? <p>{none}</p> : <PictureFigure picture={picture} drawings={drawings} />}
      </Part>
      <Part title={breakdown.title} note={breakdown.note}>
        <WordedTable table={breakdown} least="34rem" />
      </Part>
      <Part title={sources.title}>
        <p className={style.text}>{report.firm.join(" ")}</p>
      </Part>
      <Part title={meaning}>
        <dl className={style.terms}>
          {report.definitions.map(({ term, text }) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
        {report.closing.map((sentence) => (
          <p key={sentence} className={style.text}>
            {sentence}
          </p>
        ))}
      </Part>
      <div className={style.tables}>
        {views.map((view) => (
          <Part key={view.key} title={view.title} id={view.key}>
            <WordedTable table={view} least="48rem" />
          </Part>
        ))}
        <Part title={rows.title} note={rows.note} id={rows.key}>
          <WordedTable table={rows} least="64rem" whyPath={whyPath} />
        </Part>
        <More title={time.title}>
          <WordedTable table={time} least="34rem" />
        </More>
        {books === null ? null : (
          <More title={books.title}>
            <p className={style.text}>{books.note}</p>
            <WordedTable table={books} least="56rem" />
          </More>
        )}
        <More title={`${sources.title} (${sources.rows.length})`}>
          <WordedTable table={sources} least="34rem" />
        </More>
      </div>
    </div>
  );
}
