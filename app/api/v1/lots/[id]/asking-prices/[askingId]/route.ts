import { askingPrice, undoAskingPrice } from "../../../../../../../lib/data/asking-prices.ts";
import { apiAskingPrice } from "../../../../../../../lib/show/api-salvage.ts";
import { changed } from "../../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../../_answers/problem.ts";
import { does, resource } from "../../../../_answers/resource.ts";
import * as operations from "../../../../_operations/salvage.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.undoAskingPrice, async ({ scope, part }) => {
    const asked = await askingPrice(scope, part("askingId"));
    if (asked?.lotId !== part("id")) return NOT_THERE;
    return changed(await undoAskingPrice(scope, asked.id), apiAskingPrice);
  }),
);
