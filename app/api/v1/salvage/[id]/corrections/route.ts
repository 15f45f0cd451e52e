import { correctSalvage } from "../../../../../../lib/data/salvage-corrections.ts";
import { changed } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { salvageAnswer } from "../../../_answers/salvage-answer.ts";
import { correctSalvage as correcting } from "../../../_operations/salvage.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(correcting, async ({ scope, part, body, today }) =>
    changed(await correctSalvage(scope, part("id"), body), await salvageAnswer(scope, part("id"), today)),
  ),
);
