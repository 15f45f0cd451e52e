import type { IndexLevel, IndexPoints, PercentChange } from "../prices/index-levels.ts";
import { figureText } from "./money-text.ts";
import { percentText } from "./percent-text.ts";

/** Places an index, its points and its percents are shown with. */
export const INDEX_PLACES = 2;

/** An index for reading, "107.67"; its base is 100.00. Rounds: half up to INDEX_PLACES. */
export function levelText({ level }: IndexLevel, locale: string): string {
  return figureText(level, locale, INDEX_PLACES, INDEX_PLACES);
}

/** Index points for reading, "+7.67": never with a percent sign. Rounds: half up to INDEX_PLACES. */
export function pointsText({ points }: IndexPoints, locale: string): string {
  return figureText(points, locale, INDEX_PLACES, INDEX_PLACES, true);
}

/** A percent change for reading, "+5.20%": always with its sign. Rounds: half up to INDEX_PLACES. */
export function changeText({ percent }: PercentChange, locale: string): string {
  return percentText(percent, locale, {
    signed: true,
    places: INDEX_PLACES,
    least: INDEX_PLACES,
  });
}
