import "server-only";
import type { Bill } from "../bills/bill.ts";
import type { BillEntry } from "../bills/bill-entry.ts";
import { billFaults } from "../bills/bill-faults.ts";
import type { BillTerms } from "../bills/bill-figures.ts";
import { type LineKept, linesKept } from "../bills/lines-kept.ts";
import type { LocalDate } from "../calendar/local-date.ts";
import type { Fault } from "../fault.ts";
import type { Material } from "../materials/material.ts";
import type { Store } from "../prices/store.ts";
import { isRecovered, taxOn } from "../tax/tax.ts";
import { materialsOfLines } from "./bill-terms.ts";
import type { Tx } from "./client.ts";
import { countedDay, dayFaults } from "./day-faults.ts";
import { storeWithin } from "./store-rows.ts";
import { regionsWithin } from "./tax-regions.ts";
import type { Workspace } from "./workspace-rows.ts";
import { fault } from "./written.ts";

/** A bill in its surroundings: what it says, what it is reckoned with, what its lines are kept as. */
export type BillToStore = Readonly<{ bill: Bill; terms: BillTerms; kept: readonly LineKept[] }>;

/** An archived material is no obstacle to a receipt's stock, only to a price seen today. */
function lineFaults({ lines }: BillEntry, materials: ReadonlyMap<string, Material>): Fault[] {
  return lines.flatMap(({ materialId, keepPrice }, at) => {
    if (materialId === null) return [];
    const material = materials.get(materialId);
    if (material === undefined) return [fault(`lines.${at}.materialId`, "not-there")];
    return keepPrice && material.archivedOn !== null ? [fault(`lines.${at}.materialId`, "archived")] : [];
  });
}

function storeFaults({ lines, currency }: BillEntry, store: Store | null): Fault[] {
  if (store === null) return [fault("storeId", "not-there")];
  const seen = lines.some(({ keepPrice }) => keepPrice);
  return [
    ...(seen && store.archivedOn !== null ? [fault("storeId", "archived")] : []),
    ...(currency === store.currency ? [] : [fault("currency", "currency-not-the-stores")]),
  ];
}

/**
 * What a bill comes to, or all that is wrong with it. A day ahead counts as today. Faults: not-there and archived (storeId,
 * lines.materialId), currency-not-the-stores (currency), day-ahead and day-too-early (on, receivedOn), unknown-region and tax-unknown (taxRegion), those of
 * `billFaults`.
 */
export async function billToStore(
  tx: Tx,
  entry: Bill,
  { workspace, today }: Readonly<{ workspace: Workspace; today: LocalDate }>,
): Promise<BillToStore | readonly Fault[]> {
  const store = await storeWithin(tx, entry.storeId);
  const materials = await materialsOfLines(tx, entry.lines);
  const on = countedDay(entry.on, today);
  const code = entry.taxRegion ?? store?.taxRegion ?? null;
  const region = code === null ? undefined : (await regionsWithin(tx)).get(code);
  const tax = region === undefined ? null : taxOn(region, on);
  const faults = [
    ...storeFaults(entry, store),
    ...lineFaults(entry, materials),
    ...dayFaults("on", entry.on, today),
    // Received on its own day, it is wrong in one place only.
    ...(entry.receivedOn === null || entry.receivedOn === entry.on
      ? []
      : dayFaults("receivedOn", entry.receivedOn, today)),
    ...(code !== null && region === undefined ? [fault("taxRegion", "unknown-region")] : []),
    ...(tax?.known === false ? [fault("taxRegion", "tax-unknown")] : []),
    ...billFaults(entry, materials),
  ];
  if (faults.length > 0 || tax?.known !== true) return faults;
  const receivedOn = entry.receivedOn === null ? null : countedDay(entry.receivedOn, today);
  const bill = { ...entry, on, receivedOn };
  const terms = { components: tax.components, materials };
  const kept = linesKept(bill, terms, {
    homeCurrency: workspace.homeCurrency,
    recovered: (component) => isRecovered(component, workspace.registrations, on),
  });
  if (kept === null) throw new Error("a bill without faults could not be reckoned");
  return { bill, terms, kept };
}
