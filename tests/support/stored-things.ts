import { v7 } from "uuid";
import { billEntry } from "../../lib/bills/bill-entry.ts";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { Scope } from "../../lib/data/client.ts";
import { addLot } from "../../lib/data/lots.ts";
import { addMaterial } from "../../lib/data/materials.ts";
import { addProject } from "../../lib/data/projects.ts";
import { addRequirement } from "../../lib/data/requirements.ts";
import { addStore } from "../../lib/data/stores.ts";
import { makeDemoWorkspace, ownerWorkspace, todayOf } from "../../lib/data/workspaces.ts";
import type { Written } from "../../lib/fault.ts";
import { materialEntry } from "../../lib/materials/material-entry.ts";
import { observationEntry } from "../../lib/prices/observation-entry.ts";
import { storeEntry } from "../../lib/prices/store-entry.ts";
import { projectEntry } from "../../lib/projects/project-entry.ts";
import { requirementEntry } from "../../lib/projects/requirement-entry.ts";
import { takeoffNeedsEntry } from "../../lib/projects/takeoff-needs.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { stockEventEntry } from "../../lib/stock/stock-event-entry.ts";

// Things as a person enters them, with only what a test cares about. Call freshDatabase() before anything is stored.

type Given = Readonly<Record<string, unknown>>;
let named = 0;
/** A name not used before in this test file. */
export function newName(kind: string): string {
  named += 1;
  return `${kind} ${named}`;
}

/** The value of a write that must be accepted. Throws: Error with the answer. */
export async function accepted<T>(write: Promise<Written<T>>): Promise<T> {
  const answer = await write;
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer)}`);
  return answer.value;
}

/** The faults of a refused write as "path: code". */
export async function faultsIn(write: Promise<Written<unknown>>): Promise<string[]> {
  const answer = await write;
  if (answer.ok || answer.why !== "faults") throw new Error(`no faults: ${JSON.stringify(answer)}`);
  return answer.faults.map(({ path, code }) => `${path}: ${code}`);
}

export async function ownerScope(): Promise<Scope & { today: LocalDate }> {
  const workspace = await ownerWorkspace();
  return { workspaceId: workspace.id, actor: "owner", today: todayOf(workspace) };
}

/** The only other workspace there can be. */
export async function otherScope(): Promise<Scope> {
  return { workspaceId: (await makeDemoWorkspace()).id, actor: "somebody" };
}

export function someStoreEntry(given: Given = {}) {
  return storeEntry.parse({ name: newName("Store"), taxRegion: "CA-NS", currency: "CAD", ...given });
}

export function someMaterialEntry(given: Given = {}) {
  const entry = { name: newName("Panel"), category: "sheet-goods", purchaseUnit: "sheet" };
  return materialEntry.parse({ ...entry, ...given });
}

/** A shelf price of 41.98 a sheet before tax. */
export function someObservationEntry(
  materialId: string,
  storeId: string,
  seenOn: LocalDate,
  given: Given = {},
) {
  return observationEntry.parse({
    materialId,
    storeId,
    seenOn,
    terms: "shelf",
    amount: "41.98",
    currency: "CAD",
    per: { quantity: "1", unit: "sheet" },
    taxIncluded: false,
    ...given,
  });
}

export function someProjectEntry(given: Given = {}) {
  return projectEntry.parse({ name: newName("Job"), status: "live", ...given });
}

export function someRequirementEntry(materialId: string, neededBy: LocalDate, given: Given = {}) {
  return requirementEntry.parse({ materialId, quantity: "20", unit: "sheet", neededBy, ...given });
}

/** Ten sheets for 300.00 before tax. */
export function someLotEntry(materialId: string, orderedOn: LocalDate, given: Given = {}) {
  const paid = { amount: "300.00", currency: "CAD", taxIncluded: false, taxRegion: "CA-NS" };
  return lotEntry.parse({ materialId, origin: "bought", quantity: "10", paid, orderedOn, ...given });
}

/** A receipt of ten sheets at 30.00 before tax, with delivery for 20.00. */
export function someBillEntry(materialId: string, storeId: string, on: LocalDate, given: Given = {}) {
  const lines = [{ materialId, quantity: "10", unit: "sheet", price: { amount: "30.00" } }];
  const fees = [{ name: "Delivery", amount: "20.00", taxable: true }];
  return billEntry.parse({ storeId, on, currency: "CAD", lines, fees, ...given });
}

/** Two doors counted, to be bought as a material bought by the piece, sheet or each. */
export function someTakeoffEntry(materialId: string, neededBy: LocalDate) {
  const takeoff = {
    calculator: "counts",
    system: "imperial",
    inputs: { items: [{ name: "Door", count: "2" }] },
  };
  const needs = [{ line: "counted door", id: v7(), materialId }];
  return takeoffNeedsEntry.parse({ takeoff, neededBy, needs });
}

export function someEvent(kind: string, quantity: string, on: LocalDate, given: Given = {}) {
  return stockEventEntry.parse({ kind, quantity, on, ...given });
}

/** A store, a material, and a live project that needs twenty of it. */
export async function storedJob(scope: Scope & { today: LocalDate }) {
  const store = await accepted(addStore(scope, v7(), someStoreEntry()));
  const material = await accepted(addMaterial(scope, v7(), someMaterialEntry()));
  const project = await accepted(addProject(scope, v7(), someProjectEntry()));
  const entry = someRequirementEntry(material.id, scope.today);
  const requirement = await accepted(addRequirement(scope, project.id, v7(), entry));
  return { store, material, project, requirement };
}

/** Such a job with ten sheets in stock for it to use. */
export async function storedStock(
  scope: Scope & { today: LocalDate },
  boughtOn: LocalDate,
  given: Given = {},
) {
  const job = await storedJob(scope);
  const lot = await accepted(addLot(scope, v7(), someLotEntry(job.material.id, boughtOn, given)));
  return { ...job, lot };
}
