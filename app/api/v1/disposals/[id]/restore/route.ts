import { redoDisposal } from "../../../../../../lib/data/disposals.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { disposalAnswer } from "../../../_answers/salvage-answer.ts";
import { restoreDisposal } from "../../../_operations/disposals.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(restoreDisposal, async ({ scope, part }) =>
    changed(await redoDisposal(scope, part("id")), await disposalAnswer(scope)),
  ),
);
