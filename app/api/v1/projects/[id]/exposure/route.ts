import { exposureFacts } from "../../../../../../lib/data/facts.ts";
import { exposure } from "../../../../../../lib/exposure/exposure.ts";
import { apiExposure } from "../../../../../../lib/show/api-exposure.ts";
import { asOfDay } from "../../../_answers/as-of.ts";
import { found } from "../../../_answers/outcome.ts";
import { does, resource } from "../../../_answers/resource.ts";
import { readExposure } from "../../../_operations/projects.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readExposure, async ({ scope, part, query, today }) => {
    const day = asOfDay(query.asOf, today);
    if (typeof day !== "string") return day;
    const { projects } = exposure(day, await exposureFacts(scope, day, part("id")));
    const project = projects.find(({ projectId }) => projectId === part("id")) ?? null;
    return found(project, (one) => apiExposure(one, day));
  }),
);
