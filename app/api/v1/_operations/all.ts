import type { Operation } from "../_answers/operation.ts";
import * as bills from "./bills.ts";
import * as disposals from "./disposals.ts";
import * as lots from "./lots.ts";
import * as materials from "./materials.ts";
import * as observations from "./observations.ts";
import * as phone from "./phone.ts";
import * as places from "./places.ts";
import * as prices from "./prices.ts";
import * as program from "./program.ts";
import * as projects from "./projects.ts";
import * as referenceIndices from "./reference-indices.ts";
import * as salvage from "./salvage.ts";
import * as savings from "./savings.ts";
import * as settings from "./settings.ts";
import * as stockActs from "./stock-acts.ts";
import {
  addStockCount,
  addStockEvent,
  HAPPENINGS,
  listStockEvents,
  restoreStockEvent,
  UNDOABLES,
  undoStockEvent,
} from "./stock-events.ts";
import * as stores from "./stores.ts";

/** What is told apart in a document: never the types of what is read and answered. */
export type AnyOperation = Pick<Operation, "method" | "path" | "summary" | "query" | "answer" | "makes"> &
  Readonly<{ body: Pick<Operation["body"], "schema"> }>;

/** Everything the interface does, in the order of the document. */
export const OPERATIONS: readonly AnyOperation[] = [
  ...[settings, stores, materials, observations, prices, projects, lots, salvage, bills, disposals].flatMap(
    (noun) => Object.values(noun),
  ),
  ...HAPPENINGS.map(addStockEvent),
  addStockCount,
  listStockEvents,
  ...[places, stockActs, referenceIndices].flatMap((noun) => Object.values(noun)),
  ...UNDOABLES.flatMap((happened) => [undoStockEvent(happened), restoreStockEvent(happened)]),
  ...[savings, phone, program].flatMap((noun) => Object.values(noun)),
];
