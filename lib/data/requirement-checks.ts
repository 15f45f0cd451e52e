import "server-only";
import { ONE } from "../decimal.ts";
import type { Fault } from "../fault.ts";
import { convertFor } from "../materials/convert.ts";
import type { Material } from "../materials/material.ts";
import { substitutionRefusals } from "../materials/substitution.ts";
import type { PurchaseUnit } from "../measure/units.ts";
import type { Alternative } from "../projects/project.ts";
import type { Tx } from "./client.ts";
import { materialsWithin } from "./material-rows.ts";
import { fault } from "./written.ts";

type Asked = Readonly<{
  materialId: string;
  unit?: PurchaseUnit;
  alternatives?: readonly Alternative[];
  fresh: boolean;
}>;

function refusalFaults(path: string, asked: Material, offered: Material): Fault[] {
  return substitutionRefusals(asked, offered).map(({ code, by }) => fault(path, code, { by }));
}

/**
 * What is wrong with what a requirement names. Faults: not-there, archived (materialId of a new one), unit-not-convertible
 * (unit), and per alternative not-there, wrong-material for the material itself and for one named twice, or every reason
 * why it may not stand in (`substitutionRefusals`).
 */
export async function requirementFaults(
  tx: Tx,
  { materialId, unit, alternatives = [], fresh }: Asked,
): Promise<Fault[]> {
  const named = [materialId, ...alternatives.map((other) => other.materialId)];
  const known = new Map((await materialsWithin(tx, named)).map((material) => [material.id, material]));
  const material = known.get(materialId);
  const faults: Fault[] = [];
  if (material === undefined) faults.push(fault("materialId", "not-there"));
  else {
    if (fresh && material.archivedOn !== null) faults.push(fault("materialId", "archived"));
    const read =
      unit === undefined ? null : convertFor(material, { value: ONE, unit }, material.purchaseUnit);
    if (read?.ok === false) faults.push(fault("unit", "unit-not-convertible", { reason: read.reason }));
  }
  for (const [index, other] of alternatives.entries()) {
    const path = `alternatives.${index}.materialId`;
    const standIn = known.get(other.materialId);
    if (standIn === undefined) faults.push(fault(path, "not-there"));
    else if (named.indexOf(other.materialId) <= index) faults.push(fault(path, "wrong-material"));
    else if (material !== undefined) faults.push(...refusalFaults(path, material, standIn));
  }
  return faults;
}
