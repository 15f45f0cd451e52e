"use client";

import { decimal, ZERO } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { againstOthers } from "../../lib/show/aisle-comparison.ts";
import type { AisleFacts, AisleMaterial } from "../../lib/show/aisle-facts.ts";
import { aislePrice, isBeforeImportCharges, type TypedTag } from "../../lib/show/aisle-price.ts";
import { shortDayText } from "../../lib/show/day-text.ts";
import { quantityText, unitPriceText } from "../../lib/show/money-text.ts";
import style from "./log.module.css";
import { logWords, unitWord } from "./words.ts";

type ReadingProps = Readonly<{ facts: AisleFacts; material: AisleMaterial; tag: TypedTag; locale: string }>;

/** What the tag comes to, all in, and how that stands beside what is known: said while it is typed. */
export function Reading({ facts, material, tag, locale }: ReadingProps) {
  const words = logWords(locale);
  const price = aislePrice(facts, tag);
  if (price === null) return null;
  if (!price.known) return <p className={style.reading}>{words.unknown[price.reason]}</p>;
  const text = (amount: string) => unitPriceText(money(amount, facts.homeCurrency), locale);
  const beside = againstOthers(price.price, material, tag.storeId);
  const store = facts.stores.find((known) => known.id === beside.elsewhere?.storeId);
  return (
    <div className={style.reading} role="status">
      <p>
        <strong className={style.allIn}>
          {words.allIn(unitPriceText(price.price, locale), facts.homeCurrency, unitWord(material.unit, "1"))}
        </strong>{" "}
        {beside.elsewhere && store
          ? words[beside.elsewhere.side](text(beside.elsewhere.by), store.name)
          : words.firstPrice}{" "}
        {material.paid
          ? words.paid(
              text(material.paid.each),
              shortDayText(material.paid.on, locale),
              material.paid.project,
            )
          : null}
      </p>
      <p className={style.quiet}>
        {decimal(material.open).greaterThan(ZERO)
          ? words.open(quantityText(decimal(material.open), locale), unitWord(material.unit, material.open))
          : words.noNeed}
        {isBeforeImportCharges(facts, tag.storeId) ? ` ${words.importCharges}` : null}
      </p>
    </div>
  );
}
