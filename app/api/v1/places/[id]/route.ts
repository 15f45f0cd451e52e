import { contentsOfPlace } from "../../../../../lib/data/place-contents.ts";
import { archivePlace, changePlace } from "../../../../../lib/data/places.ts";
import { apiPlace, apiPlaceContents } from "../../../../../lib/show/api-place.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/places.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readPlace, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    return found(await contentsOfPlace(scope, part("id"), day), ({ place, loads }) =>
      apiPlaceContents(place, loads),
    );
  }),
  does(operations.changePlace, async ({ scope, part, body }) =>
    changed(await changePlace(scope, part("id"), body), apiPlace),
  ),
  does(operations.archivePlace, async ({ scope, part }) =>
    changed(await archivePlace(scope, part("id")), apiPlace),
  ),
);
