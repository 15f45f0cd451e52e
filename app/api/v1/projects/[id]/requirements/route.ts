import { project } from "../../../../../../lib/data/projects.ts";
import { addRequirement, requirementsOf } from "../../../../../../lib/data/requirements.ts";
import { apiRequirement } from "../../../../../../lib/show/api-project.ts";
import { asOfDay } from "../../../_answers/as-of.ts";
import { created } from "../../../_answers/created.ts";
import { pageOf } from "../../../_answers/page.ts";
import { NOT_THERE } from "../../../_answers/problem.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { addRequirements, listRequirements } from "../../../_operations/projects.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listRequirements, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    if ((await project(scope, part("id"))) === null) return NOT_THERE;
    const requirements = (await requirementsOf(scope, part("id"))).map((one) => apiRequirement(one, day));
    return { status: 200, value: pageOf(requirements, ({ id }) => id, query) };
  }),
  does(addRequirements, async ({ scope, part, body, today }) => {
    if ((await project(scope, part("id"))) === null) return NOT_THERE;
    return created(
      body,
      ({ id, entry }) => addRequirement(scope, part("id"), id, entry),
      (requirement) => apiRequirement(requirement, today),
    );
  }),
);
