import { addPlace, placesOf } from "../../../../lib/data/places.ts";
import { apiPlace } from "../../../../lib/show/api-place.ts";
import { created } from "../_answers/created.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { addPlaces, listPlaces } from "../_operations/places.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listPlaces, async ({ scope, query }) => {
    const places = (await placesOf(scope, query)).map(apiPlace);
    return { status: 200, value: pageOf(places, ({ id }) => id, query) };
  }),
  does(addPlaces, ({ scope, body }) =>
    created(body, ({ id, entry }) => addPlace(scope, id, entry), apiPlace),
  ),
);
