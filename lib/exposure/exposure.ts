import type { LocalDate } from "../calendar/local-date.ts";
import { ZERO } from "../decimal.ts";
import { money } from "../money/money.ts";
import { goingPriceOn } from "../prices/going-price.ts";
import type { GoingPrice, Offer } from "../prices/offer.ts";
import { offersOn } from "../prices/offers.ts";
import { orderCharges } from "../prices/order-charges.ts";
import { projectBudget } from "../projects/budget.ts";
import { statusOn } from "../projects/revisions.ts";
import { coveredPools } from "./covered-pools.ts";
import { type ExposureFacts, groupedBy, materialOf } from "./exposure-facts.ts";
import type { ProjectExposure, WorkspaceExposure } from "./exposure-figures.ts";
import { lockedInOn, nothingLockedIn } from "./locked-in.ts";
import { poolsOf } from "./pools.ts";
import { openNeed, type RequirementLine, requirementExposure, requirementLine } from "./requirement-lines.ts";
import { projectTotals, sumOfTotals } from "./totals.ts";

export type { ExposureFacts } from "./exposure-facts.ts";

/** Answers kept by key: a material's offers and going price are worked out once, and only where they are asked for. */
function kept<T>(answer: (key: string) => T): (key: string) => T {
  const answers = new Map<string, T>();
  return (key) => {
    const known = answers.get(key);
    if (known !== undefined) return known;
    const found = answer(key);
    answers.set(key, found);
    return found;
  };
}

/** What the prices of the day say, by material. */
function pricesOf(day: LocalDate, { materials, valuation, observations }: ExposureFacts) {
  const seen = groupedBy(observations, (observation) => observation.materialId);
  const offersOf = kept((id): readonly Offer[] => {
    const material = materials.get(id);
    return material === undefined ? [] : offersOn(day, seen.get(id) ?? [], material, valuation).offers;
  });
  const goingNow = kept((id): GoingPrice => {
    const material = materials.get(id);
    return material === undefined
      ? { known: false }
      : goingPriceOn(day, seen.get(id) ?? [], material, valuation);
  });
  return { offersOf, goingNow };
}

/**
 * Every project against what is locked in and what finishing it costs, at the end of a day.
 *     open = required - locked in;  cost to finish = least total over the offers in force, pooled by project and material
 *     estimate at completion = locked cost + cost to finish + charges per order;  variance = budget - estimate
 * A limited offer is given out once, to live projects first, then by needed-by day. A finished or dropped project and a
 * closed requirement have nothing open. Projects and requirements that did not exist yet are left out. The totals are the
 * sum over live projects only. Units: purchase units, home currency. Rounds: each cover once, shared to the cent.
 * @throws {RangeError} when a requirement's or a lot's material is not among the facts. Source: rules.md R6, R8, R9, R11.
 */
export function exposure(day: LocalDate, facts: ExposureFacts): WorkspaceExposure {
  const currency = facts.valuation.homeCurrency;
  const zero = money(ZERO, currency);
  const { offersOf, goingNow } = pricesOf(day, facts);
  const locked = lockedInOn(day, facts, goingNow);
  const requirements = groupedBy(facts.requirements, (requirement) => requirement.projectId);
  const jobs = facts.projects.flatMap((project) => {
    const status = statusOn(project, day);
    if (status === null) return [];
    const lines = (requirements.get(project.id) ?? []).flatMap((requirement): RequirementLine[] => {
      const material = materialOf(facts, requirement.materialId);
      const line = requirementLine(
        day,
        requirement,
        material,
        status,
        locked.get(requirement.id) ?? nothingLockedIn(zero),
      );
      return line === null ? [] : [line];
    });
    return [{ project, status, lines }];
  });
  const needs = jobs.flatMap(({ lines }) => lines.flatMap((line) => openNeed(line) ?? []));
  const { costs, pools } = coveredPools(poolsOf(needs), { currency, offersOf, materials: facts.materials });
  const projects = jobs.map(({ project, lines }): ProjectExposure => {
    const figures = lines.map((line) =>
      requirementExposure(line, costs.get(line.requirement.id) ?? null, zero),
    );
    const buys = pools.get(project.id) ?? [];
    const charges = orderCharges(
      buys.flatMap((pool) => pool.takes),
      currency,
    );
    const budget = projectBudget(
      project,
      figures.map((line) => line.budget),
    );
    const totals = projectTotals(figures, charges, budget, currency);
    return { projectId: project.id, lines: figures, pools: buys, orderCharges: charges, totals };
  });
  const live = projects.filter((_, index) => jobs[index]?.status === "live");
  return {
    day,
    projects,
    totals: sumOfTotals(
      live.map(({ totals }) => totals),
      currency,
    ),
  };
}
