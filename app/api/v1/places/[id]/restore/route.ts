import { restorePlace } from "../../../../../../lib/data/places.ts";
import { apiPlace } from "../../../../../../lib/show/api-place.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/places.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.restorePlace, async ({ scope, part }) =>
    changed(await restorePlace(scope, part("id")), apiPlace),
  ),
);
