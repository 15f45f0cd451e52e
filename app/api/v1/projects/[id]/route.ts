import { changeProject, project } from "../../../../../lib/data/projects.ts";
import { apiProject } from "../../../../../lib/show/api-project.ts";
import { asOfDay } from "../../_answers/as-of.ts";
import { changed, found } from "../../_answers/outcome.ts";
import { does, resource } from "../../_answers/resource.ts";
import * as operations from "../../_operations/projects.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.readProject, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    return found(await project(scope, part("id")), (one) => apiProject(one, day));
  }),
  does(operations.changeProject, async ({ scope, part, body, today }) =>
    changed(await changeProject(scope, part("id"), body), (one) => apiProject(one, today)),
  ),
);
