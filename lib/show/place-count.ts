import { type Decimal, decimal } from "../decimal.ts";
import { type CountText, countText } from "./count-text.ts";

/** What a place's books say of a lot there. Purchase units. */
export type Booked = Readonly<{ lotId: string; quantity: Decimal }>;

/** One lot counted, beside the books. difference: how many were found or are missing. */
export type CountedText = Readonly<{
  lotId: string;
  booked: CountText;
  counted: CountText;
  kind: "found" | "missing";
  difference: CountText;
}>;

/** A stock-take before it is booked: what differs, how many agree, how many were not counted. */
export type PlaceCountText = Readonly<{
  differences: readonly CountedText[];
  agree: number;
  uncounted: number;
}>;

/**
 * A count beside the books: difference = counted - booked; above: found, below: missing. counted: canonical decimal text by lot; a lot
 * left out was not counted. Units: purchase units. Rounds: for reading.
 */
export function placeCount(
  booked: readonly Booked[],
  counted: ReadonlyMap<string, string>,
  locale: string,
): PlaceCountText {
  const differences: CountedText[] = [];
  let agree = 0;
  let uncounted = 0;
  for (const { lotId, quantity } of booked) {
    const said = counted.get(lotId);
    if (said === undefined) {
      uncounted += 1;
      continue;
    }
    const difference = decimal(said).minus(quantity);
    if (difference.isZero()) {
      agree += 1;
      continue;
    }
    differences.push({
      lotId,
      booked: countText(quantity, locale),
      counted: countText(decimal(said), locale),
      kind: difference.isNegative() ? "missing" : "found",
      difference: countText(difference.abs(), locale),
    });
  }
  return { differences, agree, uncounted };
}
