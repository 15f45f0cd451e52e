import { materialFacts } from "../../../../../../lib/data/facts.ts";
import { apiCosts } from "../../../../../../lib/show/api-costs.ts";
import { costByMethod } from "../../../../../../lib/stock/cost-methods.ts";
import { asOfDay } from "../../../_answers/as-of.ts";
import { NOT_THERE } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { readCosts } from "../../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readCosts, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const facts = await materialFacts(scope, part("id"), day);
    const material = facts?.materials.get(part("id"));
    if (facts === null || material === undefined) return NOT_THERE;
    const costs = costByMethod(material, facts, facts.valuation, day);
    return { status: 200, value: apiCosts(costs, facts.valuation.homeCurrency) };
  }),
);
