import { lotPayment, undoPayment } from "../../../../../../../lib/data/lot-payments.ts";
import { apiPayment } from "../../../../../../../lib/show/api-stock-act.ts";
import { changed } from "../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../_answers/problem.ts";
import { does, resource } from "../../../../_answers/resource.ts";
import * as operations from "../../../../_operations/stock-acts.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.undoPayment, async ({ scope, part }) => {
    const there = await lotPayment(scope, part("paymentId"));
    if (there?.lotId !== part("id")) return NOT_THERE;
    return changed(await undoPayment(scope, there.id), apiPayment);
  }),
);
