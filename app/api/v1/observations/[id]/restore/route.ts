import { undeleteObservation } from "../../../../../../lib/data/observations.ts";
import { apiObservation } from "../../../../../../lib/show/api-observation.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/observations.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.restoreObservation, async ({ scope, part }) =>
    changed(await undeleteObservation(scope, part("id")), apiObservation),
  ),
);
