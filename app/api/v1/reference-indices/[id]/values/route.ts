import { indexValues } from "../../../../../../lib/data/index-values.ts";
import { referenceIndex } from "../../../../../../lib/data/reference-indices.ts";
import { valuesAsOf } from "../../../../../../lib/indices/index-value.ts";
import { apiIndexValue } from "../../../../../../lib/show/api-index.ts";
import { asOfDay } from "../../../_answers/as-of.ts";
import { pageOf } from "../../../_answers/page.ts";
import { NOT_THERE } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { listIndexValues } from "../../../_operations/reference-indices.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listIndexValues, async ({ scope, part, today, query }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const index = await referenceIndex(scope, part("id"));
    if (index === null) return NOT_THERE;
    const values = valuesAsOf(await indexValues(scope, index.id), day).map(apiIndexValue);
    return { status: 200, value: pageOf(values, ({ month }) => month, query) };
  }),
);
