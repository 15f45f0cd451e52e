import { addProject, projectsOf } from "../../../../lib/data/projects.ts";
import { apiProject } from "../../../../lib/show/api-project.ts";
import { asOfDay } from "../_answers/as-of.ts";
import { created } from "../_answers/created.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import { addProjects, listProjects } from "../_operations/projects.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(listProjects, async ({ scope, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const projects = (await projectsOf(scope)).map((one) => apiProject(one, day));
    return { status: 200, value: pageOf(projects, ({ id }) => id, query) };
  }),
  does(addProjects, ({ scope, body, today }) =>
    created(
      body,
      ({ id, entry }) => addProject(scope, id, entry),
      (project) => apiProject(project, today),
    ),
  ),
);
