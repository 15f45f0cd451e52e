"use client";

import { useEffect, useMemo, useState } from "react";
import { type ToCheck, toCheckAt } from "../../lib/show/aisle-visit.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { moneyText, quantityText } from "../../lib/show/money-text.ts";
import { remember, remembered } from "../_offline/snapshot.ts";
import style from "./aisle.module.css";
import type { Aisle } from "./use-aisle.client.ts";
import { type LogWords, unitWord } from "./words.ts";

type ChecklistProps = Readonly<{
  aisle: Aisle;
  storeId: string;
  words: LogWords;
  locale: string;
  onMaterial: (id: string) => void;
}>;

function whyWords(
  { why, open, unit, ageDays, lapsesOn, money }: ToCheck,
  words: LogWords,
  locale: string,
): string {
  const quantity = `${quantityText(open, locale)} ${unitWord(unit, open.toFixed())}`;
  const rests = money === null ? "" : moneyText(money, locale, { currency: true });
  if (why === "lapses" && lapsesOn !== null) return words.checkLapses(dayText(lapsesOn, locale), rests);
  return why === "stale" ? words.checkStale(ageDays ?? 0, rests) : words.checkUnseen(quantity);
}

/** What to look at in this store today; logged, it is ticked off by itself. Works without a server. */
export function Checklist({ aisle, storeId, words, locale, onMaterial }: ChecklistProps) {
  const { snapshot, today, since } = aisle;
  const key = `ticked ${snapshot.workspace.id} ${storeId} ${today}`;
  const [ticked, setTicked] = useState<readonly string[]>([]);
  useEffect(() => {
    void remembered<readonly string[]>(key, []).then(setTicked);
  }, [key]);
  const list = useMemo(() => toCheckAt(snapshot, storeId, today), [snapshot, storeId, today]);
  const logged = new Set(
    since.seen
      .filter((seen) => seen.storeId === storeId && seen.seenOn === today)
      .map((seen) => seen.materialId),
  );
  if (list.length === 0) return null;
  const isDone = (materialId: string) => logged.has(materialId) || ticked.includes(materialId);
  const left = list.filter(({ materialId }) => !isDone(materialId)).length;
  const tick = (materialId: string, on: boolean) => {
    const next = on ? [...ticked, materialId] : ticked.filter((id) => id !== materialId);
    setTicked(next);
    void remember(key, next);
  };
  return (
    <details className={style.part}>
      <summary>{words.toCheck(left, list.length)}</summary>
      <ul className={style.rows}>
        {list.map((one) => (
          <li key={one.materialId} className={style.line}>
            <label className={style.check}>
              <input
                type="checkbox"
                checked={isDone(one.materialId)}
                disabled={logged.has(one.materialId)}
                onChange={(event) => tick(one.materialId, event.target.checked)}
              />
              <span>
                {one.name}
                <span className={style.why}>{whyWords(one, words, locale)}</span>
              </span>
            </label>
            <button type="button" className={style.link} onClick={() => onMaterial(one.materialId)}>
              {words.logIt}
              <span className={style.hidden}> {one.name}</span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
