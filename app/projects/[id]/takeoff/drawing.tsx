import type { UnitSystem } from "../../../../lib/measure/unit-system.ts";
import { drawnView } from "../../../../lib/show/drawn-view.ts";
import type { View } from "../../../../lib/takeoff/drawing.ts";
import { named } from "./named.ts";
import style from "./takeoff.module.css";
import type { TakeoffWords } from "./takeoff-words.ts";

type DrawnProps = Readonly<{ view: View; system: UnitSystem; words: TakeoffWords }>;

/** One view of what is measured, to scale; where there was no room on it, a letter is told below. */
export function DrawnView({ view, system, words }: DrawnProps) {
  const drawn = drawnView(view, system, (name) => named(words, name));
  const { box, letters, outlines, lines, dimensions, legend } = drawn;
  return (
    <figure className={style.figure}>
      <svg
        className={style.drawing}
        role="img"
        aria-label={[words.views[view.name], dimensions.map(({ text }) => text).join(", ")]
          .filter(Boolean)
          .join(": ")}
        viewBox={box}
      >
        {outlines.map(({ key, name, corners }) => (
          <polygon key={key} className={style.shape} data-part={name} points={corners} />
        ))}
        {lines.map(({ key, name, from, to }) => (
          <line
            key={key}
            className={style.stroke}
            data-part={name}
            x1={from[0]}
            y1={from[1]}
            x2={to[0]}
            y2={to[1]}
          />
        ))}
        {dimensions.map(({ key, from, to }) => (
          <line key={key} className={style.span} x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
        ))}
        {dimensions.map(({ key, ground }) => (
          <rect key={key} className={style.ground} {...ground} />
        ))}
        {dimensions.map(({ key, x, y, turn, text, mark }) => (
          <text
            key={key}
            className={style.label}
            x={x}
            y={y}
            fontSize={letters}
            textAnchor="middle"
            dominantBaseline="central"
            transform={turn}
          >
            {mark ?? text}
          </text>
        ))}
      </svg>
      {legend.length === 0 ? null : (
        <figcaption className={style.legend}>
          {legend.map(({ mark, text }) => (
            <span key={mark}>
              <b>{mark}</b> {text}
            </span>
          ))}
        </figcaption>
      )}
    </figure>
  );
}
