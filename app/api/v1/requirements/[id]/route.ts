import { requirement, reviseRequirement } from "../../../../../lib/data/requirements.ts";
import { apiRequirement } from "../../../../../lib/show/api-project.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/projects.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readRequirement, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    return found(await requirement(scope, part("id")), (one) => apiRequirement(one, day));
  }),
  does(operations.reviseRequirement, async ({ scope, part, body, today }) =>
    changed(await reviseRequirement(scope, part("id"), body), (one) => apiRequirement(one, today)),
  ),
);
