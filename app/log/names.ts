import type { AisleSnapshot } from "../../lib/show/aisle-snapshot.ts";

/** What things of a snapshot are called; what is not in it is a dash. */
export type AisleNames = Readonly<{
  material: (id: string) => string;
  store: (id: string) => string;
  project: (id: string) => string;
}>;

/** Stands where a name is not known. */
export const NOT_KNOWN = "–";

function nameIn(things: readonly Readonly<{ id: string; name: string }>[]): (id: string) => string {
  return (id) => things.find((thing) => thing.id === id)?.name ?? NOT_KNOWN;
}

export function aisleNames({ materials, stores, projects }: AisleSnapshot): AisleNames {
  return { material: nameIn(materials), store: nameIn(stores), project: nameIn(projects) };
}
