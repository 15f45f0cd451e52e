import { beforeAll, expect, test } from "vitest";
import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import { materialEntry } from "../../lib/materials/material-entry.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { observationEntry } from "../../lib/prices/observation-entry.ts";
import { storeEntry } from "../../lib/prices/store-entry.ts";
import { projectEntry } from "../../lib/projects/project-entry.ts";
import { requirementEntry } from "../../lib/projects/requirement-entry.ts";
import { savings } from "../../lib/savings/savings.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { taxRegionEntry } from "../../lib/tax/tax-region-entry.ts";
import { demoId } from "../../prisma/demo/id.ts";
import { freshDatabase } from "../support/database.ts";
import { plain, wholeHistory, withHistory } from "../support/whole-history.ts";

await freshDatabase();
const { ownerWorkspace, todayOf } = await import("../../lib/data/workspaces.ts");
const { addStore, archiveStore } = await import("../../lib/data/stores.ts");
const { addMaterial } = await import("../../lib/data/materials.ts");
const { addObservations } = await import("../../lib/data/observations.ts");
const { addProject } = await import("../../lib/data/projects.ts");
const { addRequirement } = await import("../../lib/data/requirements.ts");
const { addLot } = await import("../../lib/data/lots.ts");
const { saveTaxRegion } = await import("../../lib/data/tax-regions.ts");
const { exposureFacts, savingsFacts } = await import("../../lib/data/facts.ts");

type Seen = Readonly<
  { at: "near" | "far" | "closed" | "across" | "untaxed"; ago: number; price?: string } & {
    terms?: string;
    min?: string;
    max?: string;
    until?: number;
    from?: number;
  }
>;

// Days are counted back from today, until and from as well. near sells fresh at 30.00; far is cheaper and older.
const FRESH: Seen = { at: "near", ago: 3, price: "30.00" };
const CASES: Readonly<Record<string, readonly Seen[]>> = {
  "a special with a later end, seen before the store had none left": [
    FRESH,
    { at: "far", ago: 60, price: "20.00", terms: "special", until: -10 },
    { at: "far", ago: 40, terms: "none-left" },
  ],
  "a shelf price with a later end that another has replaced": [
    FRESH,
    { at: "far", ago: 60, price: "20.00", until: -10 },
    { at: "far", ago: 40, price: "35.00" },
  ],
  "a break with a later end that another has replaced": [
    FRESH,
    { at: "far", ago: 60, price: "20.00", terms: "quantity-break", min: "5", until: -10 },
    { at: "far", ago: 40, price: "35.00", terms: "quantity-break", min: "5" },
  ],
  "a fresh price for four at a store whose price for one is old": [
    FRESH,
    { at: "far", ago: 50, price: "10.00" },
    { at: "far", ago: 2, price: "22.00", min: "4" },
  ],
  "nothing fresh but a price for four, its price for one is old": [
    { at: "near", ago: 50, price: "31.00" },
    { at: "near", ago: 2, price: "28.00", min: "4" },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "the only fresh store has none left": [
    { at: "near", ago: 5, price: "30.00" },
    { at: "near", ago: 4, terms: "none-left" },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "the only fresh store holds six": [
    { at: "near", ago: 5, price: "30.00", max: "6" },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "the only fresh price was to begin later": [
    { at: "near", ago: 5, price: "30.00", from: 2 },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "the only fresh store has closed": [
    { at: "closed", ago: 5, price: "30.00" },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "the only fresh store is across the border, its charges not confirmed": [
    { at: "across", ago: 5, price: "12.00" },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "the only fresh store is where the tax was not known yet": [
    { at: "untaxed", ago: 17, price: "12.00" },
    { at: "untaxed", ago: 1, price: "12.50" },
    { at: "far", ago: 60, price: "20.00" },
  ],
  "two prices of one day, the later entered one counts": [
    { at: "near", ago: 5, price: "30.00" },
    { at: "near", ago: 5, price: "29.00" },
    { at: "near", ago: 5, price: "31.00" },
    { at: "far", ago: 45, price: "20.00" },
  ],
  "prices on either side of the days between": [
    { at: "near", ago: 75, price: "24.00" },
    { at: "near", ago: 10, price: "34.00" },
    { at: "far", ago: 70, price: "20.00" },
    { at: "far", ago: 1, price: "26.00" },
  ],
  "a day between two prices long ago": [
    { at: "far", ago: 130, price: "20.00" },
    { at: "far", ago: 75, price: "26.00" },
    ...[45, 36, 13, 2].map((ago): Seen => ({ at: "near", ago, price: "30.00" })),
  ],
  "three prices of one day long ago": [
    { at: "far", ago: 65, price: "30.00" },
    { at: "far", ago: 65, price: "29.00" },
    { at: "far", ago: 65, price: "31.00" },
  ],
  "a price older than a year": [{ at: "far", ago: 400, price: "20.00" }],
};
const NAMES = Object.keys(CASES);

const materialId = (name: string) => demoId(`material ${name}`);
const storeId = (name: string) => demoId(`store ${name}`);
let scope = { workspaceId: "", actor: "test" };
let today: LocalDate;
let history: Observation[] = [];

async function saved(write: Promise<{ ok: boolean }>): Promise<void> {
  expect(await write).toMatchObject({ ok: true });
}

function sighting(name: string, { at, ago, price, terms = "shelf", min, max, until, from }: Seen, n: number) {
  const day = (back: number | undefined) => (back === undefined ? null : plusDays(today, -back));
  const priced = {
    amount: price,
    currency: "CAD",
    per: { quantity: "1", unit: "sheet" },
    taxIncluded: at === "untaxed",
  };
  return {
    // In the order of the list, as ids that grow with time are.
    id: `00000000-0000-7000-8000-${materialId(name).slice(0, 8)}${String(n).padStart(4, "0")}`,
    entry: observationEntry.parse({
      materialId: materialId(name),
      storeId: storeId(at),
      seenOn: plusDays(today, -ago),
      terms,
      ...(price === undefined ? {} : priced),
      minQuantity: min ?? null,
      maxQuantity: max ?? null,
      until: day(until),
      from: day(from),
    }),
  };
}

async function addCase(name: string): Promise<void> {
  const material = { name, category: "sheet-goods", purchaseUnit: "sheet" };
  await saved(addMaterial(scope, materialId(name), materialEntry.parse(material)));
  const requirement = {
    materialId: materialId(name),
    quantity: "20",
    unit: "sheet",
    neededBy: plusDays(today, 20),
    validFrom: plusDays(today, -500),
  };
  const id = demoId(`requirement ${name}`);
  await saved(addRequirement(scope, demoId("project"), id, requirementEntry.parse(requirement)));
  for (const ago of [90, 40, 35, 12]) {
    const bought = {
      materialId: materialId(name),
      origin: "bought",
      quantity: "2",
      orderedOn: plusDays(today, -ago),
      paid: { amount: "50.00", currency: "CAD", taxIncluded: true, taxRegion: "CA-NS" },
    };
    const lot = demoId(`lot ${name} ${ago}`);
    await saved(addLot(scope, lot, lotEntry.parse(bought), { allocateTo: id }));
  }
  const sent = CASES[name]?.map((seen, n) => sighting(name, seen, n)) ?? [];
  expect((await addObservations(scope, sent)).rejected).toEqual([]);
}

beforeAll(async () => {
  const workspace = await ownerWorkspace();
  scope = { workspaceId: workspace.id, actor: "test" };
  today = todayOf(workspace);
  const tax = { name: "Tax", ratePercent: "10", from: plusDays(today, -15), recoverable: false };
  const region = { code: "CA-ZZ", name: "New tax", components: [{ ...tax, evidence: "made up" }] };
  await saved(saveTaxRegion(scope, taxRegionEntry.parse(region)));
  const regions = { near: "CA-NS", far: "CA-NS", closed: "CA-NS", across: "US-ME", untaxed: "CA-ZZ" };
  await saved(saveTaxRegion(scope, taxRegionEntry.parse({ code: "US-ME", name: "Across", components: [] })));
  for (const [name, taxRegion] of Object.entries(regions))
    await saved(addStore(scope, storeId(name), storeEntry.parse({ name, taxRegion, currency: "CAD" })));
  const project = { name: "Job", status: "live", statusFrom: plusDays(today, -500) };
  await saved(addProject(scope, demoId("project"), projectEntry.parse(project)));
  for (const name of NAMES) await addCase(name);
  await saved(archiveStore(scope, storeId("closed")));
  history = await wholeHistory(scope, today);
});

test.each(NAMES)("exposure is the same from the candidates as from the whole history: %s", async (name) => {
  for (const ago of [0, 1, 4, 12, 14, 16, 30, 38, 55, 61]) {
    const day = plusDays(today, -ago);
    const facts = await exposureFacts(scope, day);
    const ofCase = (given: typeof facts) =>
      exposure(day, given).projects[0]?.lines.filter((line) => line.materialId === materialId(name));
    expect(plain(ofCase(facts))).toEqual(plain(ofCase(withHistory(facts, history, day))));
    expect(ofCase(facts)).toHaveLength(1);
  }
});

test.each(NAMES)("savings are the same from the candidates as from the whole history: %s", async (name) => {
  for (const ago of [0, 1, 5, 31]) {
    const day = plusDays(today, -ago);
    const facts = await savingsFacts(scope, null, day);
    const ofCase = (given: typeof facts) =>
      savings(null, null, day, given).rows.filter((row) => row.materialId === materialId(name));
    expect(plain(ofCase(facts))).toEqual(plain(ofCase(withHistory(facts, history, day))));
    expect(ofCase(facts).length).toBeGreaterThan(0);
  }
});
