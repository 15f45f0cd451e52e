"use client";

import { readBack } from "../../lib/show/parse-amount.ts";
import { withPointMoved } from "../../lib/show/point-moved.ts";
import { Notice } from "../_ui/notice.tsx";
import style from "./log.module.css";
import { Tap } from "./tap.client.tsx";
import type { LogWords } from "./words.ts";

type DoubtProps = Readonly<{
  doubt: "tenth" | "tenfold" | null;
  amount: string | undefined;
  words: LogWords;
  locale: string;
  /** sure: as typed; else with the point moved. */
  onAnswer: (sure: boolean) => void;
}>;

/** "Did you mean 29.98?": asked before a price ten times off is kept, never changed unasked. */
export function Doubt({ doubt, amount, words, locale, onAnswer }: DoubtProps) {
  if (doubt === null || amount === undefined) return null;
  const meant = readBack(withPointMoved(amount, doubt), locale);
  return (
    <div role="alert">
      <Notice tone="warn">
        <p>{words.didYouMean(meant)}</p>
        <div className={style.answers}>
          <Tap onTap={() => onAnswer(false)}>{words.meant(meant)}</Tap>
          <Tap onTap={() => onAnswer(true)}>{words.asTyped(readBack(amount, locale))}</Tap>
        </div>
      </Notice>
    </div>
  );
}
