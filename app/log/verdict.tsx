import { getLocale } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { decimal, ONE } from "../../lib/decimal.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import type { Valuation } from "../../lib/prices/valuation.ts";
import { comparisonBasis } from "../../lib/show/comparison-basis.ts";
import type { LoggedPrice } from "../../lib/show/logged-price.ts";
import { loggedPriceText } from "../../lib/show/logged-price-text.ts";
import { Caution, Notice } from "../_ui/notice.tsx";
import { UndoBar } from "../_ui/undo-bar.tsx";
import type { Names } from "../_workspace/names-of.ts";
import { takeBack } from "./actions.ts";
import style from "./log.module.css";
import { sentencesOf } from "./sentences.ts";
import { logWords, unitWord } from "./words.ts";

/** After a price is kept: what it means, in sentences, and the way to take it back. */
export async function Verdict({
  observation,
  logged,
  names,
  valuation,
  day,
}: Readonly<{
  observation: Observation;
  logged: LoggedPrice;
  names: Names;
  valuation: Valuation;
  day: LocalDate;
}>) {
  const locale = await getLocale();
  const words = logWords(locale);
  const currency = valuation.homeCurrency;
  const text = loggedPriceText(logged, locale);
  const [first, ...rest] = sentencesOf(text, names, currency, locale, words);
  const quantity = text.covers === null ? (logged.offer?.minQuantity ?? ONE) : decimal(text.covers.exact);
  const basis =
    text.unit === null ? null : comparisonBasis({ quantity, unit: text.unit }, valuation, day, locale);
  return (
    <section className={style.verdict} aria-labelledby="verdict">
      <UndoBar undo={{ action: takeBack, fields: { id: observation.id }, label: words.undo }}>
        {words.kept(names.store(observation.storeId), names.material(observation.materialId))}
      </UndoBar>
      <h2 id="verdict">{words.meansTitle}</h2>
      <Notice tone={text.leftOut === null ? "plain" : "warn"}>
        {text.allIn !== null && text.unit !== null ? (
          <p className={style.verdictPrice}>{words.allIn(text.allIn, currency, unitWord(text.unit, "1"))}</p>
        ) : null}
        {first === undefined ? null : (
          <p>
            <strong>{first}</strong>
          </p>
        )}
        {rest.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {basis === null ? null : <p className={style.quiet}>{words.basis(basis)}</p>}
      </Notice>
      {observation.terms === "used" ? <Caution>{words.usedCaution}</Caution> : null}
    </section>
  );
}
