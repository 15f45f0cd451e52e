import { restoreStore } from "../../../../../../lib/data/stores.ts";
import { apiStore } from "../../../../../../lib/show/api-store.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/stores.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.restoreStore, async ({ scope, part }) =>
    changed(await restoreStore(scope, part("id")), apiStore),
  ),
);
