import { correctionsOf, correctObservation, observation } from "../../../../../../lib/data/observations.ts";
import { apiCorrection, apiObservation } from "../../../../../../lib/show/api-observation.ts";
import { changed } from "../../../_answers/outcome.ts";
import { NOT_THERE } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import * as operations from "../../../_operations/observations.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listCorrections, async ({ scope, part }) => {
    if ((await observation(scope, part("id"))) === null) return NOT_THERE;
    return { status: 200, value: { items: (await correctionsOf(scope, part("id"))).map(apiCorrection) } };
  }),
  does(operations.correctObservation, async ({ scope, part, body: { reason, ...patch } }) =>
    changed(await correctObservation(scope, part("id"), patch, reason), apiObservation),
  ),
);
