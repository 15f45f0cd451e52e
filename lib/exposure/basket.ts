import { type LocalDate, plusDays } from "../calendar/local-date.ts";
import { monthStartsBetween } from "../calendar/month-starts.ts";
import { type Decimal, ZERO } from "../decimal.ts";
import type { Material } from "../materials/material.ts";
import { type BasketIndex, basketIndex } from "../prices/basket-index.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import {
  type IndexPoints,
  type PercentChange,
  percentBetween,
  pointsBetween,
} from "../prices/index-levels.ts";
import type { Observation } from "../prices/observation.ts";
import type { Valuation } from "../prices/valuation.ts";
import type { Project, Requirement } from "../projects/project.ts";
import { requiredOn } from "../projects/required.ts";
import { isClosedOn } from "../projects/revisions.ts";
import { type ExposureFacts, groupedBy, materialOf } from "./exposure-facts.ts";

/** What a basket's index is computed from. observations: every shelf sighting of its materials up to the day. */
export type BasketFacts = Pick<
  ExposureFacts,
  "valuation" | "materials" | "requirements" | "observations" | "projects"
>;

/** The most days an index is reckoned on, the base and the last day counted. */
export const MOST_BASKET_DAYS = 36;
const YEAR = 365;

/** An index on a day. sinceBefore: against the point before it, where both rest on the same materials. */
export type BasketPoint = Readonly<{
  day: LocalDate;
  index: BasketIndex;
  sinceBefore: Readonly<{ points: IndexPoints; percent: PercentChange }> | null;
}>;
/** points: the base first, the day asked for last. now: the same as the last. */
export type ProjectBasket = Readonly<{
  base: LocalDate;
  day: LocalDate;
  points: readonly BasketPoint[];
  now: BasketIndex;
}>;

/** The base taken when none is chosen: the day the project was first planned; where that is not past, a year before the day. */
export function usualBase(project: Project, day: LocalDate): LocalDate {
  const first = project.statuses.reduce<LocalDate | null>(
    (so, { from }) => (so === null || from < so ? from : so),
    null,
  );
  return first !== null && first < day ? first : plusDays(day, -YEAR);
}

/** Required of each material, pooled; null: some of it cannot be read in purchase units. */
function quantitiesOf(
  requirements: readonly Requirement[],
  day: LocalDate,
  facts: BasketFacts,
): Map<Material, Decimal | null> {
  const quantities = new Map<Material, Decimal | null>();
  for (const requirement of requirements) {
    if (isClosedOn(requirement, day)) continue;
    const material = materialOf(facts, requirement.materialId);
    const required = requiredOn(requirement, day, material);
    if (!required.known && required.reason === "not-yet") continue;
    const before = quantities.get(material);
    const sum = required.known && before !== null ? (before ?? ZERO).plus(required.quantity) : null;
    quantities.set(material, sum);
  }
  return quantities;
}

/** The going price of a past day as it is looked at from a later one; null: not known, or no price at all. */
function priceOn(
  on: LocalDate,
  seen: readonly Observation[],
  material: Material,
  valuation: Valuation,
  knownOn: LocalDate,
): Decimal | null {
  const going = goingPriceOn(on, seen, material, valuation, knownOn);
  return going.known && going.price.amount.greaterThan(0) ? going.price.amount : null;
}

function sameMaterials(a: BasketIndex, b: BasketIndex): boolean {
  const keys = ({ coverage }: BasketIndex) => coverage.known.map(({ key }) => key).join(" ");
  return keys(a) === keys(b);
}

/**
 * A project's basket index through time (Lowe): what is required on `day` at each day's going prices over the same at the
 * base day's, on the base day, first days of months between, and the day; at most MOST_BASKET_DAYS.
 *     index = 100 x sum(required x going price of the day) / sum(required x going price of the base day)
 * required: R8, waste included, closed needs left out. Going prices: R7, all in at each day's own tax and rate, looked at
 * from `day`. Each day over the materials known on it and on the base, with that coverage.
 * null: nothing is required. Units: index, base = 100; costs in home currency. Rounds: never.
 * @throws {RangeError} when base is not before day, or a material is not among the facts. Source: `loweIndex`; rules.md R7, R8.
 */
export function projectBasket(
  projectId: string,
  day: LocalDate,
  base: LocalDate,
  facts: BasketFacts,
): ProjectBasket | null {
  if (base >= day) throw new RangeError(`the base day ${base} must lie before ${day}`);
  const own = facts.requirements.filter((requirement) => requirement.projectId === projectId);
  const seen = groupedBy(facts.observations, ({ materialId }) => materialId);
  const items = [...quantitiesOf(own, day, facts)].map(([material, quantity]) => {
    const price = (on: LocalDate) => priceOn(on, seen.get(material.id) ?? [], material, facts.valuation, day);
    return { key: material.id, quantity, basePrice: price(base), price };
  });
  if (items.length === 0) return null;
  const indexOn = (on: LocalDate) => basketIndex(items.map((item) => ({ ...item, price: item.price(on) })));
  const days = [base, ...monthStartsBetween(base, day, MOST_BASKET_DAYS - 2), day];
  const indices = days.map((on) => ({ day: on, index: indexOn(on) }));
  const points = indices.map(({ day: on, index }, at): BasketPoint => {
    const before = indices[at - 1]?.index;
    const comparable = before?.known && index.known && sameMaterials(before, index);
    return {
      day: on,
      index,
      sinceBefore: comparable
        ? {
            points: pointsBetween(before.level, index.level),
            percent: percentBetween(before.level, index.level),
          }
        : null,
    };
  });
  const now = indices.at(-1)?.index;
  return now === undefined ? null : { base, day, points, now };
}
