import { savingsFacts } from "../../../../lib/data/facts.ts";
import { project } from "../../../../lib/data/projects.ts";
import { savings } from "../../../../lib/savings/savings.ts";
import { savingsOfProject } from "../../../../lib/savings/savings-report.ts";
import { apiSavings } from "../../../../lib/show/api-savings.ts";
import { asOfDay } from "../_answers/as-of.ts";
import { NOT_THERE } from "../_answers/problem.ts";
import { does, resource } from "../_answers/resource.ts";
import { readSavings } from "../_operations/savings.ts";

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(readSavings, async ({ scope, query, today }) => {
    const { from = null, to = null, projectId = null } = query;
    const asOf = asOfDay(query.asOf, today);
    if (typeof asOf !== "string") return asOf;
    if (projectId !== null && (await project(scope, projectId)) === null) return NOT_THERE;
    const report = savings(from, to, asOf, await savingsFacts(scope, projectId, asOf));
    const asked = projectId === null ? report : savingsOfProject(report, projectId);
    return { status: 200, value: apiSavings(asked, { from, to, asOf }) };
  }),
);
