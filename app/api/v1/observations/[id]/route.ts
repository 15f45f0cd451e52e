import { deleteObservation, observation } from "../../../../../lib/data/observations.ts";
import { apiObservation } from "../../../../../lib/show/api-observation.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/observations.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readObservation, async ({ scope, part }) =>
    found(await observation(scope, part("id")), apiObservation),
  ),
  does(operations.deleteObservation, async ({ scope, part }) =>
    changed(await deleteObservation(scope, part("id")), apiObservation),
  ),
);
