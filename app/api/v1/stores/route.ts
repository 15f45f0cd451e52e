import { addStore, storesOf } from "../../../../lib/data/stores.ts";
import { apiStore } from "../../../../lib/show/api-store.ts";
import { created } from "../_answers/created.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { addStores, listStores } from "../_operations/stores.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listStores, async ({ scope, query }) => {
    const stores = (await storesOf(scope, query)).map(apiStore);
    return { status: 200, value: pageOf(stores, ({ id }) => id, query) };
  }),
  does(addStores, ({ scope, body }) =>
    created(body, ({ id, entry }) => addStore(scope, id, entry), apiStore),
  ),
);
