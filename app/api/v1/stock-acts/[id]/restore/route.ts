import { redoAct } from "../../../../../../lib/data/stock-acts.ts";
import { apiStockAct } from "../../../../../../lib/show/api-stock-act.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { restoreStockAct } from "../../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(restoreStockAct, async ({ scope, part }) => changed(await redoAct(scope, part("id")), apiStockAct)),
);
