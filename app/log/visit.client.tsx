"use client";

import { money } from "../../lib/money/money.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { unitPriceText } from "../../lib/show/money-text.ts";
import type { AcknowledgedRow, Row } from "../_offline/log-database.ts";
import { priceSent } from "../_offline/since.ts";
import style from "./aisle.module.css";
import { aisleNames } from "./names.ts";
import type { Aisle } from "./use-aisle.client.ts";
import { type LogWords, TERMS_WORDS } from "./words.ts";

/** Prices logged at one store on one day, on this phone: they are one visit. */
function pricesOfVisit(
  { rows, since, snapshot }: Aisle,
  storeId: string,
  day: string,
): (Row | AcknowledgedRow)[] {
  return [...rows.acknowledged, ...rows.outbox]
    .filter(({ kind, workspaceId }) => kind === "price" && workspaceId === snapshot.workspace.id)
    .filter((row) => priceSent(row).storeId === storeId && priceSent(row).seenOn === day)
    .filter(({ id }) => !since.gone.has(id))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

type VisitProps = Readonly<{ aisle: Aisle; storeId: string; words: LogWords; locale: string }>;

/** What was logged at a store today, together; what still waits to be sent carries a diamond. */
export function Visit({ aisle, storeId, words, locale }: VisitProps) {
  const names = aisleNames(aisle.snapshot);
  const prices = pricesOfVisit(aisle, storeId, aisle.today);
  if (prices.length === 0) return null;
  return (
    <section className={style.part} aria-labelledby="visit">
      <h2 id="visit">{words.visit(names.store(storeId), dayText(aisle.today, locale))}</h2>
      <ul className={style.rows}>
        {prices.map((row) => {
          const { materialId, amount, terms, currency } = priceSent(row);
          const sent = "acknowledgedAt" in row;
          return (
            <li key={row.id} className={style.line}>
              <span>{names.material(materialId)}</span>
              <span className={style.figure}>
                {amount === undefined || currency === undefined
                  ? ""
                  : `${unitPriceText(money(amount, currency), locale)} ${currency} `}
                {terms === "shelf" ? "" : TERMS_WORDS[terms]}
                {sent ? "" : ` ◆ ${row.state === "queued" ? words.onPhone : words.refusedShort}`}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
