import { addAskingPrice, askingPrices } from "../../../../../../lib/data/asking-prices.ts";
import { lot } from "../../../../../../lib/data/lots.ts";
import { apiAskingPrice } from "../../../../../../lib/show/api-salvage.ts";
import { found, made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/salvage.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listAskingPrices, async ({ scope, part }) => {
    const asked = await askingPrices(scope, part("id"));
    return found(await lot(scope, part("id")), () => ({ items: asked.map(apiAskingPrice) }));
  }),
  does(operations.addAskingPrice, async ({ scope, part, body: { id, entry } }) =>
    made(await addAskingPrice(scope, part("id"), id, entry), apiAskingPrice),
  ),
);
