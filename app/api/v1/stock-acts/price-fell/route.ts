import { offerFacts } from "../../../../../lib/data/facts.ts";
import { apiPriceFell } from "../../../../../lib/show/api-stock-act.ts";
import { priceFell } from "../../../../../lib/stock/price-fell.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { does, resource } from "../../_answers/resource.ts";
import { listPriceFell } from "../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listPriceFell, async ({ scope, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const fell = priceFell(day, await offerFacts(scope, day));
    return { status: 200, value: { items: fell.map(apiPriceFell) } };
  }),
);
