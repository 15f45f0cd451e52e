import { correctDisposal } from "../../../../../../lib/data/disposals.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { disposalAnswer } from "../../../_answers/salvage-answer.ts";
import { correctDisposal as correcting } from "../../../_operations/disposals.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(correcting, async ({ scope, part, body }) =>
    changed(await correctDisposal(scope, part("id"), body), await disposalAnswer(scope)),
  ),
);
