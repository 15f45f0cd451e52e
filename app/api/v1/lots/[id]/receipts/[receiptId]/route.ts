import { lotReceipt, undoReceipt } from "../../../../../../../lib/data/lot-receipts.ts";
import { apiReceipt } from "../../../../../../../lib/show/api-stock-act.ts";
import { changed } from "../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../_answers/problem.ts";
import { does, resource } from "../../../../_answers/resource.ts";
import * as operations from "../../../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.undoReceipt, async ({ scope, part }) => {
    const there = await lotReceipt(scope, part("receiptId"));
    if (there?.lotId !== part("id")) return NOT_THERE;
    return changed(await undoReceipt(scope, there.id), apiReceipt);
  }),
);
