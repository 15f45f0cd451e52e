import type { ReactNode } from "react";
import style from "./page.module.css";

/** The head of a screen: its name, and the answer to its one question in words. aside: the main thing to do. */
export function PageHead(
  props: Readonly<{ title: ReactNode; answer?: ReactNode; aside?: ReactNode; up?: ReactNode }>,
) {
  return (
    <header className={style.head}>
      {props.up ? <p className={style.up}>{props.up}</p> : null}
      <h1>{props.title}</h1>
      {props.answer ? <p className={style.answer}>{props.answer}</p> : null}
      {props.aside ? <div className={style.aside}>{props.aside}</div> : null}
    </header>
  );
}

/** A part of a screen under its own heading. */
export function Part(
  props: Readonly<{ title: ReactNode; children: ReactNode; id?: string; note?: ReactNode }>,
) {
  return (
    <section className={style.part} id={props.id}>
      <h2>{props.title}</h2>
      {props.note ? <p className={style.note}>{props.note}</p> : null}
      {props.children}
    </section>
  );
}

/** Figures with their names in a ruled line: the few that answer the question. */
export function KeyFigures({
  figures,
}: Readonly<{
  figures: readonly Readonly<{ key: string; label: ReactNode; value: ReactNode; note?: ReactNode }>[];
}>) {
  return (
    <dl className={style.key}>
      {figures.map((figure) => (
        <div key={figure.key}>
          <dt>{figure.label}</dt>
          <dd>
            {figure.value}
            {figure.note ? <span className={style.keyNote}>{figure.note}</span> : null}
          </dd>
        </div>
      ))}
    </dl>
  );
}
