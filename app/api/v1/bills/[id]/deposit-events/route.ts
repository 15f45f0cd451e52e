import { addDepositEvent } from "../../../../../../lib/data/bill-deposits.ts";
import { apiDepositEvent } from "../../../../../../lib/show/api-bill.ts";
import { made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/bills.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.addDepositEvent, async ({ scope, part, body: { id, entry } }) =>
    made(await addDepositEvent(scope, part("id"), id, entry), apiDepositEvent),
  ),
);
