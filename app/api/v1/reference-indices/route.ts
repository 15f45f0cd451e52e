import { addReferenceIndex, referenceIndices } from "../../../../lib/data/reference-indices.ts";
import { apiReferenceIndex } from "../../../../lib/show/api-index.ts";
import { created } from "../_answers/created.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { addReferenceIndices, listReferenceIndices } from "../_operations/reference-indices.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listReferenceIndices, async ({ scope, query }) => {
    const indices = (await referenceIndices(scope)).map(apiReferenceIndex);
    return { status: 200, value: pageOf(indices, ({ id }) => id, query) };
  }),
  does(addReferenceIndices, ({ scope, body }) =>
    created(body, ({ id, entry }) => addReferenceIndex(scope, id, entry), apiReferenceIndex),
  ),
);
