"use client";

import { money } from "../../lib/money/money.ts";
import { type PlainSeen, plainSeen } from "../../lib/show/aisle-seen.ts";
import type { SnapshotMaterial } from "../../lib/show/aisle-snapshot.ts";
import type { Since } from "../../lib/show/aisle-verdict.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { unitPriceText } from "../../lib/show/money-text.ts";
import field from "../_ui/field.module.css";
import type { LogWords } from "./words.ts";

/** The newest shelf price of a material at a store, also one just logged; null: none is known. */
export function lastShelfAt(plain: SnapshotMaterial, storeId: string, since: Since): PlainSeen | null {
  const logged = since.seen.filter(({ materialId }) => materialId === plain.id).map(plainSeen);
  return (
    [...plain.seen, ...logged]
      .filter((seen) => seen.terms === "shelf" && seen.storeId === storeId && !since.gone.has(seen.id))
      .sort((a, b) => (a.on === b.on ? a.id.localeCompare(b.id) : a.on.localeCompare(b.on)))
      .at(-1) ?? null
  );
}

type ShelfQuestionProps = Readonly<{ shelf: PlainSeen | null; locale: string; words: LogWords }>;

/** Beside a special: is the shelf price the same as last time? Asked from what was seen, never from the tag's "was". */
export function ShelfQuestion({ shelf, locale, words }: ShelfQuestionProps) {
  if (shelf?.amount === undefined || shelf.currency === undefined) return null;
  return (
    <label className={field.choice}>
      <input type="checkbox" name="stillSo" value="yes" />
      {words.stillSo(unitPriceText(money(shelf.amount, shelf.currency), locale), dayText(shelf.on, locale))}
    </label>
  );
}
