import { materialFacts } from "../../../../../../lib/data/facts.ts";
import { apiPricesOn } from "../../../../../../lib/show/api-prices-on.ts";
import { asOfDay } from "../../../_answers/as-of.ts";
import { NOT_THERE } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { readPrices } from "../../../_operations/prices.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readPrices, async ({ scope, part, today, query: { asOf, ...asked } }) => {
    const day = asOfDay(asOf, today);
    if (typeof day !== "string") return day;
    const facts = await materialFacts(scope, part("id"), day);
    const material = facts?.materials.get(part("id"));
    if (!facts || !material) return NOT_THERE;
    const value = apiPricesOn(day, facts.observations, material, facts.valuation, asked);
    return { status: 200, value };
  }),
);
