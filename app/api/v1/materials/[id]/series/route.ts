import { valuationOf } from "../../../../../../lib/data/facts.ts";
import { material } from "../../../../../../lib/data/materials.ts";
import { historyOf } from "../../../../../../lib/data/observations.ts";
import { priceSeries } from "../../../../../../lib/prices/series.ts";
import { apiSeries } from "../../../../../../lib/show/api-prices.ts";
import { NOT_THERE } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { readSeries } from "../../../_operations/prices.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readSeries, async ({ scope, part, today, query }) => {
    const of = await material(scope, part("id"));
    if (of === null) return NOT_THERE;
    const { from = null, to: until = today, unit = of.purchaseUnit, currency } = query;
    const history = await historyOf(scope, of.id, until);
    const points = priceSeries(history, of, await valuationOf(scope), { from, until, unit, currency });
    return { status: 200, value: apiSeries(points, unit, currency) };
  }),
);
