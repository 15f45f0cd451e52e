import { addTaxRegion, taxRegions } from "../../../../lib/data/tax-regions.ts";
import { apiTaxRegion } from "../../../../lib/show/api-settings.ts";
import { made } from "../_answers/outcome.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import * as operations from "../_operations/settings.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listTaxRegions, async ({ scope, query }) => {
    const regions = (await taxRegions(scope)).map(apiTaxRegion);
    return { status: 200, value: pageOf(regions, ({ code }) => code, query) };
  }),
  does(operations.addTaxRegion, async ({ scope, body }) =>
    made(await addTaxRegion(scope, body), apiTaxRegion),
  ),
);
