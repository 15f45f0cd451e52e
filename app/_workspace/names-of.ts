import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";

/** What things are called, by their ids. Something deleted since is named by a dash, never left out. */
export type Names = Readonly<{
  material: (id: string) => string;
  store: (id: string) => string;
  project: (id: string) => string;
}>;

export function namesOf(facts: Pick<ExposureFacts, "materials" | "projects" | "valuation">): Names {
  const projects = new Map(facts.projects.map((project) => [project.id, project.name]));
  return {
    material: (id) => facts.materials.get(id)?.name ?? "–",
    store: (id) => facts.valuation.stores.get(id)?.name ?? "–",
    project: (id) => projects.get(id) ?? "–",
  };
}
