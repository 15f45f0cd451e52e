import { stockAct, undoAct } from "../../../../../lib/data/stock-acts.ts";
import { apiStockAct } from "../../../../../lib/show/api-stock-act.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readStockAct, async ({ scope, part }) =>
    found(await stockAct(scope, part("id")), apiStockAct),
  ),
  does(operations.undoStockAct, async ({ scope, part }) =>
    changed(await undoAct(scope, part("id")), apiStockAct),
  ),
);
