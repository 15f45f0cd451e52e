"use client";

import { money } from "../../lib/money/money.ts";
import type { SnapshotMaterial } from "../../lib/show/aisle-snapshot.ts";
import { shortDayText } from "../../lib/show/day-text.ts";
import { quantityText, unitPriceText } from "../../lib/show/money-text.ts";
import type { PriceEntrySent } from "./check-price.ts";
import style from "./log.module.css";
import { aisleNames } from "./names.ts";
import { typedVerdict } from "./typed-verdict.ts";
import type { Aisle } from "./use-aisle.client.ts";
import { logWords, unitWord } from "./words.ts";

type ReadingProps = Readonly<{
  entry: PriceEntrySent;
  plain: SnapshotMaterial;
  aisle: Aisle;
  locale: string;
}>;

/** What the tag comes to, all in, and how that stands beside what is known: said while it is typed. */
export function Reading({ entry, plain, aisle, locale }: ReadingProps) {
  const words = logWords(locale);
  const { unit } = plain;
  const names = aisleNames(aisle.snapshot);
  const { logged } = typedVerdict(entry, plain, aisle);
  const { price } = logged.means;
  if (!aisle.known) return null;
  if (!price.known) return <p className={style.reading}>{words.unknown[price.reason]}</p>;
  const { amount, currency } = price.price;
  const { elsewhere, paid } = logged;
  const difference = elsewhere === null ? null : amount.minus(elsewhere.price.amount);
  const side = !difference || difference.isZero() ? "same" : difference.isNegative() ? "under" : "over";
  const project = paid?.projectIds[0];
  return (
    <div className={style.reading} role="status">
      <p>
        <strong className={style.allIn}>
          {words.allIn(unitPriceText(price.price, locale), currency, unitWord(unit, "1"))}
        </strong>{" "}
        {difference && elsewhere
          ? words[side](
              unitPriceText(money(difference.abs(), currency), locale),
              names.store(elsewhere.storeId),
            )
          : words.firstPrice}{" "}
        {paid
          ? words.paid(
              unitPriceText(paid.each, locale),
              shortDayText(paid.on, locale),
              project === undefined ? null : names.project(project),
            )
          : null}
      </p>
      <p className={style.quiet}>
        {logged.open.isZero()
          ? words.noNeed
          : words.open(quantityText(logged.open, locale), unitWord(unit, logged.open.toFixed()))}
        {logged.means.beforeImportCharges ? ` ${words.importCharges}` : null}
      </p>
    </div>
  );
}
