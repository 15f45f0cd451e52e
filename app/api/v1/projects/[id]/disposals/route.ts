import { addDisposal, disposalsOf } from "../../../../../../lib/data/disposals.ts";
import { project } from "../../../../../../lib/data/projects.ts";
import { found, made } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { disposalAnswer } from "../../../_answers/salvage-answer.ts";
import * as operations from "../../../_operations/disposals.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listDisposals, async ({ scope, part, query }) => {
    const all = await disposalsOf(scope, part("id"), query);
    const answer = await disposalAnswer(scope);
    return found(await project(scope, part("id")), () => ({ items: all.map(answer) }));
  }),
  does(operations.addDisposal, async ({ scope, part, body: { id, entry } }) =>
    made(await addDisposal(scope, part("id"), id, entry), await disposalAnswer(scope)),
  ),
);
