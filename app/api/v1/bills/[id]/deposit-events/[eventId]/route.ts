import { depositEvent, undoDepositEvent } from "../../../../../../../lib/data/bill-deposits.ts";
import { apiDepositEvent } from "../../../../../../../lib/show/api-bill.ts";
import { changed } from "../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../_answers/problem.ts";
import { does, resource } from "../../../../_answers/resource.ts";
import * as operations from "../../../../_operations/bills.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.undoDepositEvent, async ({ scope, part }) => {
    const found = await depositEvent(scope, part("eventId"));
    if (found?.billId !== part("id")) return NOT_THERE;
    return changed(await undoDepositEvent(scope, found.id), apiDepositEvent);
  }),
);
