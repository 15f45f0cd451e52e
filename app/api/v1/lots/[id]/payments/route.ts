import { addPayment } from "../../../../../../lib/data/lot-payments.ts";
import { apiPayment } from "../../../../../../lib/show/api-stock-act.ts";
import { made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.addPayment, async ({ scope, part, body: { id, entry } }) =>
    made(await addPayment(scope, part("id"), id, entry), apiPayment),
  ),
);
