"use client";

import { decimal, ONE } from "../../lib/decimal.ts";
import type { Material } from "../../lib/materials/material.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { snapshotValuation } from "../../lib/show/aisle-opened.ts";
import { type AisleVerdict, aisleVerdictText } from "../../lib/show/aisle-verdict.ts";
import { comparisonBasis } from "../../lib/show/comparison-basis.ts";
import { measuresOfOne } from "../../lib/show/measures-of-one.ts";
import { unitPriceText } from "../../lib/show/money-text.ts";
import look from "../_ui/notice.module.css";
import { Caution, Notice } from "../_ui/notice.tsx";
import style from "./log.module.css";
import { aisleNames } from "./names.ts";
import { sentencesOf } from "./sentences.ts";
import { Tap } from "./tap.client.tsx";
import type { Aisle } from "./use-aisle.client.ts";
import { logWords, MEASURE_WORDS, unitWord } from "./words.ts";

type VerdictProps = Readonly<{
  aisle: Aisle;
  observation: Observation;
  verdict: AisleVerdict;
  material: Material;
  locale: string;
  onUndo: () => void;
}>;

/** The price by every measure the material is compared by: per square foot of a sheet. */
function perMeasure({ verdict: { logged }, material, locale }: VerdictProps): string {
  const { price } = logged.means;
  if (!price.known) return "";
  return measuresOfOne(material, locale)
    .flatMap(({ unit, exact }) => {
      const name = MEASURE_WORDS[unit];
      if (name === undefined) return [];
      const each = { ...price.price, amount: price.price.amount.dividedBy(exact) };
      return [`${unitPriceText(each, locale)} ${name}`];
    })
    .join(", ");
}

/** After a price is kept: what it means, in sentences, worked out on the phone; and the way to take it back. */
export function Verdict(props: VerdictProps) {
  const { aisle, observation, verdict, locale, onUndo } = props;
  const { snapshot } = aisle;
  const words = logWords(locale);
  const names = aisleNames(snapshot);
  const valuation = snapshotValuation(snapshot, aisle.today);
  const text = aisleVerdictText(verdict, locale);
  const currency = valuation.homeCurrency;
  const [first, ...rest] = sentencesOf(text, names, currency, locale, words);
  const { offer } = verdict.logged;
  const quantity = text.covers === null ? (offer?.minQuantity ?? ONE) : decimal(text.covers.exact);
  const basis =
    text.unit === null
      ? null
      : comparisonBasis({ quantity, unit: text.unit }, valuation, valuation.today, locale);
  const measures = perMeasure(props);
  return (
    <section className={style.verdict} aria-labelledby="verdict">
      <div className={look.undo} role="status">
        <p>{words.kept(names.store(observation.storeId), names.material(observation.materialId))}</p>
        <Tap kind="quiet" onTap={onUndo}>
          {words.undo}
        </Tap>
      </div>
      <h2 id="verdict">{words.meansTitle}</h2>
      <Notice tone={text.leftOut === null ? "plain" : "warn"}>
        {text.allIn !== null && text.unit !== null ? (
          <p className={style.verdictPrice}>{words.allIn(text.allIn, currency, unitWord(text.unit, "1"))}</p>
        ) : null}
        {measures === "" ? null : <p>{measures}</p>}
        {aisle.known ? null : <p>{words.nothingKnown}</p>}
        {first === undefined || !aisle.known ? null : (
          <p>
            <strong>{first}</strong>
          </p>
        )}
        {aisle.known ? rest.map((sentence) => <p key={sentence}>{sentence}</p>) : null}
        {basis === null ? null : <p className={style.quiet}>{words.basis(basis)}</p>}
      </Notice>
      {observation.terms === "used" ? <Caution>{words.usedCaution}</Caution> : null}
    </section>
  );
}
