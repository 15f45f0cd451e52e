import { type Money, money } from "../money/money.ts";
import type { IndexLevel } from "./index-levels.ts";

/**
 * A nominal amount in the money of another day, by a reference index.
 *     real = nominal x level on the other day / level on the amount's own day
 * The other way round it escalates a contract: 1,000 from 120.0 to 126.0 is 1,050.
 * ownDay, otherDay: levels of one index on one base, the latest published on or before each day.
 * Units: the amount's currency. Rounds: never (division to 40 digits).
 * @throws {RangeError} when a level is not above zero. Source: Consumer Price Index Manual (IMF and others), deflating.
 */
export function realPrice(nominal: Money, ownDay: IndexLevel, otherDay: IndexLevel): Money {
  for (const { level } of [ownDay, otherDay])
    if (!level.greaterThan(0))
      throw new RangeError(`an index cannot stand at ${level}: leave such a value out`);
  return money(nominal.amount.times(otherDay.level).dividedBy(ownDay.level), nominal.currency);
}
