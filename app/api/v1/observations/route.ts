import type { Scope } from "../../../../lib/data/client.ts";
import { addObservation, addObservations, observationsOf } from "../../../../lib/data/observations.ts";
import type { ObservationEntry } from "../../../../lib/prices/observation-entry.ts";
import { apiObservation } from "../../../../lib/show/api-observation.ts";
import { created } from "../_answers/created.ts";
import { type AddMany, cameOf } from "../_answers/many-answer.ts";
import type { New } from "../_answers/new-body.ts";
import { does, resource } from "../_answers/resource.ts";
import * as operations from "../_operations/observations.ts";

function adding(scope: Scope): AddMany<New<ObservationEntry>> {
  return async (entries) => {
    const { rejected } = await addObservations(scope, entries);
    return cameOf(
      entries.map(({ id }) => id),
      rejected,
    );
  };
}

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listObservations, async ({ scope, query: { materialId, limit, cursor, deleted } }) => {
    const page = await observationsOf(scope, materialId, { limit, cursor, includeDeleted: deleted });
    return { status: 200, value: { items: page.items.map(apiObservation), nextCursor: page.next } };
  }),
  does(operations.addObservations, ({ scope, body }) =>
    created(body, ({ id, entry }) => addObservation(scope, id, entry), apiObservation, adding(scope)),
  ),
);
