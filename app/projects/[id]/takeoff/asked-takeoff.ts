import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import type { Scope } from "../../../../lib/data/client.ts";
import { requirementsOf } from "../../../../lib/data/requirements.ts";
import { type StoredTakeoff, takeoff } from "../../../../lib/data/takeoffs.ts";
import { UNIT_SYSTEMS, type UnitSystem } from "../../../../lib/measure/unit-system.ts";
import { revisionOn } from "../../../../lib/projects/revisions.ts";
import type { CalculatorName } from "../../../../lib/takeoff/calculators.ts";
import { asked, type Query } from "../../../_workspace/day-asked.ts";
import { isId } from "../../../_workspace/id-asked.ts";
import { INPUT_SHAPES } from "./input-shapes.ts";
import { inputsTyped, type TypedInputs } from "./typed-inputs.ts";

export type AskedTakeoff = Readonly<{
  system: UnitSystem;
  typed: TypedInputs;
  sent: boolean;
  reopened: StoredTakeoff | null;
}>;

/** What the address says was typed; of a takeoff opened again, what is stored, until something else is sent. */
export async function askedTakeoff(
  scope: Scope,
  query: Query,
  calculator: CalculatorName,
  projectId: string,
): Promise<AskedTakeoff> {
  const id = await asked(query, "reopen");
  const found = isId(id) ? await takeoff(scope, id) : null;
  const reopened = found?.calculator === calculator && found.projectId === projectId ? found : null;
  const sent = (await asked(query, "sent")) === "yes";
  const shape = INPUT_SHAPES[calculator];
  if (reopened !== null && !sent)
    return {
      system: reopened.system,
      typed: inputsTyped(shape, reopened.inputs, reopened.system),
      sent: true,
      reopened,
    };
  const said = await asked(query, "system");
  const system = UNIT_SYSTEMS.find((one) => one === said) ?? "imperial";
  const texts = Object.entries(await query).map(([name, value]) => [
    name,
    Array.isArray(value) ? value[0] : value,
  ]);
  const typed: TypedInputs = Object.fromEntries(texts.filter(([, value]) => value !== undefined));
  return { system, typed, sent, reopened };
}

/** What a line became, to start its fields with. */
export type NeedBefore = Readonly<{
  materialId: string;
  wastePercent: string;
  neededBy: LocalDate;
  closed: boolean;
}>;

/** What the lines of a takeoff became, as it stands on a day, by the key of the line. */
export async function needsBefore(
  scope: Scope,
  reopened: StoredTakeoff | null,
  day: LocalDate,
): Promise<ReadonlyMap<string, NeedBefore>> {
  if (reopened === null) return new Map();
  const all = new Map((await requirementsOf(scope, reopened.projectId)).map((need) => [need.id, need]));
  const known = reopened.needs.flatMap(({ line, requirementId }): [string, NeedBefore][] => {
    const need = all.get(requirementId);
    const revision = need && (revisionOn(need, day) ?? need.revisions[0]);
    if (need === undefined || revision === undefined) return [];
    const { wastePercent, neededBy } = revision;
    const { materialId, closedOn } = need;
    return [
      [line, { materialId, wastePercent: wastePercent.toFixed(), neededBy, closed: closedOn !== null }],
    ];
  });
  return new Map(known);
}
