import { archiveStore, changeStore, store } from "../../../../../lib/data/stores.ts";
import { apiStore } from "../../../../../lib/show/api-store.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/stores.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readStore, async ({ scope, part }) => found(await store(scope, part("id")), apiStore)),
  does(operations.changeStore, async ({ scope, part, body }) =>
    changed(await changeStore(scope, part("id"), body), apiStore),
  ),
  does(operations.archiveStore, async ({ scope, part }) =>
    changed(await archiveStore(scope, part("id")), apiStore),
  ),
);
