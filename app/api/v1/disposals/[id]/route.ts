import { disposal, undoDisposal } from "../../../../../lib/data/disposals.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import { disposalAnswer } from "../../_answers/salvage-answer.ts";
import * as operations from "../../_operations/disposals.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readDisposal, async ({ scope, part }) =>
    found(await disposal(scope, part("id")), await disposalAnswer(scope)),
  ),
  does(operations.undoDisposal, async ({ scope, part }) =>
    changed(await undoDisposal(scope, part("id")), await disposalAnswer(scope)),
  ),
);
