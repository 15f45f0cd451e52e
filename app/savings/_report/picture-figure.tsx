import { Drawing } from "./drawing.tsx";
import style from "./picture.module.css";
import type { LegendLine, WordedReport } from "./worded.ts";

/** A piece of a line as it stands in the picture. */
function Swatch({ series }: Pick<LegendLine, "series">) {
  return (
    <svg viewBox="0 0 28 14" className={style.swatch} aria-hidden="true">
      {series === "saved" ? <path d="M1 3H27V13H1Z" className={style.saved} /> : null}
      {series === "lost" ? (
        <>
          <path d="M2 12L10 4M9 12L17 4M16 12L24 4" className={style.hatch} />
          <path d="M1 3H27V13H1Z" className={`${style.lost} ${style.bare}`} />
        </>
      ) : null}
      {series === "net" ? <path d="M1 7H27" className={style.net} /> : null}
      {series === "held" ? (
        <>
          <path d="M1 7H27" className={style.held} />
          <circle cx="14" cy="7" r="3" className={style.mark} />
        </>
      ) : null}
    </svg>
  );
}

/** The picture, wide on a page and on paper, narrow on a phone, with what each line is and where it stands now. */
export function PictureFigure({ picture, drawings }: Pick<WordedReport, "picture" | "drawings">) {
  if (drawings === null) return null;
  const words = { title: picture.title, text: picture.text };
  return (
    <figure className={style.sheet}>
      <Drawing drawing={drawings.wide} {...words} className={style.wide} />
      <Drawing drawing={drawings.narrow} {...words} className={style.narrow} />
      <figcaption>
        <ul className={style.legend}>
          {picture.legend.map(({ series, label, figure }) => (
            <li key={series}>
              <Swatch series={series} />
              <span>{label}</span>
              <span className={style.figure}>{figure}</span>
            </li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}
