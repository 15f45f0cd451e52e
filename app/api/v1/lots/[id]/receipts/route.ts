import { addReceipt } from "../../../../../../lib/data/lot-receipts.ts";
import { apiReceipt } from "../../../../../../lib/show/api-stock-act.ts";
import { made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.addReceipt, async ({ scope, part, body: { id, entry } }) =>
    made(await addReceipt(scope, part("id"), id, entry), apiReceipt),
  ),
);
