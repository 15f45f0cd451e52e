import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { demoId } from "./id.ts";
import { materialId } from "./materials.ts";
import { requirementId } from "./projects.ts";
import { KESTREL_HILL, MILL_ROAD } from "./stores.ts";

export type DemoLot = Readonly<{ id: string; materialId: string } & Record<string, unknown>>;
export type DemoEvent = Readonly<{ id: string; lotId: string; kind: string } & Record<string, unknown>>;

const HERON = "Heron Lane workshop";
const BIRCH = "Birch Road kitchen";
const QUARRY = "Quarry Street basement suite";

/** What was laid in: amount on the receipt for the whole quantity, before tax unless said. */
export function demoLots(today: LocalDate): DemoLot[] {
  const lot = (
    name: string,
    key: string,
    ago: number,
    quantity: string,
    amount: string,
    more: Record<string, unknown> = {},
  ): DemoLot => ({
    id: demoId(`lot ${name}`),
    materialId: materialId(key),
    origin: "bought",
    quantity,
    orderedOn: plusDays(today, -ago),
    paid: { amount, currency: "CAD", taxIncluded: false, taxRegion: "CA-NS" },
    storeId: MILL_ROAD,
    storedAt: "Shed, north wall",
    ...more,
  });
  return [
    lot("ply12 spring", "ply12", 150, "27", "702.00", { terms: "special" }),
    lot("stud spring", "stud", 140, "164", "605.16", { terms: "quantity-break" }),
    lot("shingle summer", "shingle", 95, "24", "712.80", {
      terms: "special",
      storeId: KESTREL_HILL,
      storedAt: "Garage, flat, two layers",
    }),
    lot("felt", "felt", 60, "2", "65.80"),
    lot("kitchen 2x4", "2x4x8", 35, "20", "85.60"),
    lot("kitchen floor", "floor", 50, "14", "1540.00", { storeId: KESTREL_HILL, terms: "special" }),
    lot("quarry stud", "stud", 260, "100", "352.00", { terms: "special" }),
    lot("quarry gyp", "gyp12", 170, "42", "756.00", { terms: "shelf" }),
    lot("quarry batt", "batt", 240, "18", "981.00", { terms: "special", storeId: KESTREL_HILL }),
    lot("quarry doors", "door32pre", 150, "3", "561.00", { terms: "shelf", storeId: KESTREL_HILL }),
    lot("quarry osb", "osb58tg", 190, "12", "379.20", { terms: "shelf" }),
    lot("salvaged windows", "win2436", 75, "2", "60.00", {
      origin: "salvaged",
      condition: "0.5",
      storeId: null,
      storedAt: "Shed, upright",
      paid: { amount: "60.00", currency: "CAD", taxIncluded: true, taxRegion: "CA-NS" },
    }),
    lot("left-over strapping", "strap", 40, "17", "0.00", {
      origin: "left-over",
      storeId: null,
      paid: { amount: "0", currency: "CAD", taxIncluded: true },
    }),
  ];
}

/** What became of it: allocated to a job, drawn for it. */
export function demoEvents(today: LocalDate): DemoEvent[] {
  const event = (
    lot: string,
    kind: string,
    ago: number,
    quantity: string,
    job?: readonly [string, string],
  ): DemoEvent => ({
    id: demoId(`event ${lot} ${kind} ${ago}`),
    lotId: demoId(`lot ${lot}`),
    kind,
    quantity,
    on: plusDays(today, -ago),
    requirementId: job ? requirementId(job[0], job[1]) : null,
  });
  return [
    event("ply12 spring", "allocated", 150, "27", [HERON, "ply12"]),
    event("stud spring", "allocated", 140, "164", [HERON, "stud"]),
    event("stud spring", "drawn", 8, "60", [HERON, "stud"]),
    event("shingle summer", "allocated", 95, "24", [HERON, "shingle"]),
    event("felt", "allocated", 60, "2", [HERON, "felt"]),
    event("kitchen 2x4", "allocated", 35, "20", [BIRCH, "2x4x8"]),
    event("kitchen 2x4", "drawn", 5, "12", [BIRCH, "2x4x8"]),
    event("kitchen floor", "allocated", 50, "14", [BIRCH, "floor"]),
    event("quarry stud", "allocated", 260, "96", [QUARRY, "stud"]),
    event("quarry stud", "drawn", 118, "96", [QUARRY, "stud"]),
    event("quarry gyp", "allocated", 170, "42", [QUARRY, "gyp12"]),
    event("quarry gyp", "drawn", 84, "42", [QUARRY, "gyp12"]),
    event("quarry batt", "allocated", 240, "18", [QUARRY, "batt"]),
    event("quarry batt", "drawn", 98, "18", [QUARRY, "batt"]),
    event("quarry doors", "allocated", 150, "3", [QUARRY, "door32pre"]),
    event("quarry doors", "drawn", 72, "3", [QUARRY, "door32pre"]),
    event("quarry osb", "allocated", 190, "12", [QUARRY, "osb58tg"]),
    event("quarry osb", "drawn", 104, "12", [QUARRY, "osb58tg"]),
  ];
}
