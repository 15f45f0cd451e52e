import { leftoversOf, returnLeftovers } from "../../../../../lib/data/stock-leftovers.ts";
import { apiLeftover, apiStockAct } from "../../../../../lib/show/api-stock-act.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { made } from "../../_answers/outcome.ts";
import { faulty } from "../../_answers/problem.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listLeftovers, async ({ scope, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const over = await leftoversOf(scope, query.projectId, day);
    if (over === null) return faulty([{ path: "projectId", code: "not-there" }]);
    return { status: 200, value: { items: over.map(apiLeftover) } };
  }),
  does(operations.returnLeftovers, async ({ scope, body: { id, entry } }) =>
    made(await returnLeftovers(scope, id, entry), apiStockAct),
  ),
);
