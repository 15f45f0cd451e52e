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
import { chance } from "../../prisma/demo/chance.ts";
import { demoId } from "../../prisma/demo/id.ts";
import { freshDatabase } from "../support/database.ts";
import { plain, wholeHistory, withHistory } from "../support/whole-history.ts";

// Many short histories with everything that ends, replaces or limits an offer, thrown together without sense.
await freshDatabase();
const { ownerWorkspace, todayOf, updateWorkspace } = await import("../../lib/data/workspaces.ts");
const { addStore, archiveStore } = await import("../../lib/data/stores.ts");
const { addMaterial } = await import("../../lib/data/materials.ts");
const { addObservations, deleteObservation } = await import("../../lib/data/observations.ts");
const { addProject } = await import("../../lib/data/projects.ts");
const { addRequirement } = await import("../../lib/data/requirements.ts");
const { addExchangeRate } = await import("../../lib/data/exchange-rates.ts");
const { addLot } = await import("../../lib/data/lots.ts");
const { exposureFacts, savingsFacts } = await import("../../lib/data/facts.ts");
const { exchangeRateEntry } = await import("../../lib/rates/exchange-rate-entry.ts");

const MATERIALS = 160;
const next = chance("odd histories");
const upTo = (most: number) => Math.floor(next() * (most + 1));
const oneOf = <T>(choices: readonly T[]): T | undefined => choices[upTo(choices.length - 1)];
const materialId = (n: number) => demoId(`odd material ${n % MATERIALS}`);
const storeId = (n: number) => demoId(`odd store ${n}`);
const projectId = (n: number) => demoId(`odd project ${n}`);

let scope = { workspaceId: "", actor: "test" };
let today: LocalDate;
let history: Observation[] = [];

const STORES = [
  { name: "Plain", taxRegion: "CA-NS", currency: "CAD" },
  { name: "Other", taxRegion: "CA-NB", currency: "CAD", discounts: [{ percent: "5" }] },
  { name: "Across, unconfirmed", taxRegion: "US-ZZ", currency: "USD" },
  { name: "Across", taxRegion: "US-ZZ", currency: "USD", importCharges: [{ name: "Duty", percent: "3" }] },
  { name: "Closed since", taxRegion: "CA-NS", currency: "CAD" },
];

function sighting(n: number, at: number) {
  const ago = oneOf([0, 0, 1, 2, 5, 7, 8, 12, 20, 29, 30, 31, 40, 70, 100, 380]) ?? 0;
  const terms =
    oneOf([
      "shelf",
      "shelf",
      "shelf",
      "special",
      "clearance",
      "quantity-break",
      "used",
      "quote",
      "none-left",
    ]) ?? "shelf";
  const seenOn = plusDays(today, -ago);
  const minQuantity = terms === "quantity-break" ? "5" : (oneOf([null, null, null, "1", "4"]) ?? null);
  const entry = {
    materialId: materialId(n),
    storeId: storeId(upTo(STORES.length - 1)),
    seenOn,
    terms,
    ...(terms === "none-left"
      ? {}
      : {
          amount: `${10 + upTo(20)}.${10 + upTo(89)}`,
          currency: oneOf(["CAD", "CAD", "USD"]),
          per: { quantity: oneOf(["1", "1", "3"]), unit: "sheet" },
          taxIncluded: next() < 0.2,
        }),
    minQuantity,
    maxQuantity: oneOf([null, null, null, "6", "15"]),
    until: terms === "quote" || next() < 0.25 ? plusDays(seenOn, upTo(60)) : null,
    from: next() < 0.15 ? plusDays(seenOn, -3 + upTo(6)) : null,
  };
  if (entry.from !== null && entry.until !== null && entry.from > entry.until) entry.from = null;
  return { id: demoId(`odd sighting ${n} ${at}`), entry: observationEntry.parse(entry) };
}

async function saved(write: Promise<{ ok: boolean }>): Promise<void> {
  expect(await write).toMatchObject({ ok: true });
}

beforeAll(async () => {
  const workspace = await ownerWorkspace();
  scope = { workspaceId: workspace.id, actor: "test" };
  today = todayOf(workspace);
  await saved(updateWorkspace(scope, { moneyRate: null }));
  const rate = { date: plusDays(today, -3), base: "USD", quote: "CAD", rate: "1.37", source: "a bank" };
  await saved(addExchangeRate(scope, exchangeRateEntry.parse(rate)));
  const { saveTaxRegion } = await import("../../lib/data/tax-regions.ts");
  const { taxRegionEntry } = await import("../../lib/tax/tax-region-entry.ts");
  const across = { code: "US-ZZ", name: "Across", components: [] };
  await saved(saveTaxRegion(scope, taxRegionEntry.parse(across)));
  for (const [n, store] of STORES.entries())
    await saved(addStore(scope, storeId(n), storeEntry.parse(store)));
  for (let n = 0; n < MATERIALS; n += 1) {
    const recheckDays = oneOf([undefined, undefined, undefined, 3, 90]);
    const entry = { name: `Odd ${n}`, category: "sheet-goods", purchaseUnit: "sheet", recheckDays };
    await saved(addMaterial(scope, materialId(n), materialEntry.parse(entry)));
  }
  const sightings = Array.from({ length: MATERIALS }, (_, n) =>
    Array.from({ length: 1 + upTo(13) }, (__, at) => sighting(n, at)),
  ).flat();
  expect((await addObservations(scope, sightings)).rejected).toEqual([]);
  for (const { id } of sightings) if (next() < 0.05) await saved(deleteObservation(scope, id));
  await saved(archiveStore(scope, storeId(4)));
  for (let n = 0; n < 4; n += 1) {
    const entry = {
      name: `Odd ${n}`,
      status: n === 3 ? "planned" : "live",
      statusFrom: plusDays(today, -400),
    };
    await saved(addProject(scope, projectId(n), projectEntry.parse(entry)));
  }
  for (let n = 0; n < MATERIALS * 2; n += 1) {
    const entry = {
      materialId: materialId(n),
      quantity: `${1 + upTo(30)}`,
      unit: "sheet",
      neededBy: plusDays(today, upTo(90) - 10),
      acceptsUsed: next() < 0.3,
      validFrom: plusDays(today, -390),
      alternatives: next() < 0.15 ? [{ materialId: materialId(n + 1), factor: oneOf(["1", "1.5"]) }] : [],
    };
    const id = demoId(`odd requirement ${n}`);
    await saved(addRequirement(scope, projectId(upTo(3)), id, requirementEntry.parse(entry)));
    if (n < MATERIALS && next() < 0.5) {
      const paid = { amount: "50.00", currency: "CAD", taxIncluded: true, taxRegion: "CA-NS" };
      const lot = { materialId: materialId(n), origin: "bought", quantity: "2", paid };
      const orderedOn = plusDays(today, -upTo(110));
      const bought = lotEntry.parse({ ...lot, orderedOn });
      await saved(addLot(scope, demoId(`odd lot ${n}`), bought, { allocateTo: id }));
    }
  }
  history = await wholeHistory(scope, today);
}, 120_000);

const AGO = [0, 1, 3, 6, 7, 8, 15, 29, 30, 35, 60, 90, 200];

test.each(AGO)(
  "exposure %i days ago is the same from the candidates as from the whole history",
  async (ago) => {
    const day = plusDays(today, -ago);
    const facts = await exposureFacts(scope, day);
    const whole = exposure(day, withHistory(facts, history, day));
    const ours = exposure(day, facts);
    for (const [index, project] of whole.projects.entries())
      expect(plain(ours.projects[index])).toEqual(plain(project));
  },
);

test.each(AGO)(
  "savings up to %i days ago are the same from the candidates as from the whole history",
  async (ago) => {
    const day = plusDays(today, -ago);
    const facts = await savingsFacts(scope, null, day);
    const whole = savings(null, null, day, withHistory(facts, history, day));
    const ours = savings(null, null, day, facts);
    for (const [index, row] of whole.rows.entries()) expect(plain(ours.rows[index])).toEqual(plain(row));
  },
);

test.each([0, 7, 60])("one project's exposure %i days ago is the same from its own facts", async (ago) => {
  const day = plusDays(today, -ago);
  const all = exposure(day, await exposureFacts(scope, day));
  for (const project of all.projects) {
    const own = exposure(day, await exposureFacts(scope, day, project.projectId));
    expect(plain(own.projects.find((one) => one.projectId === project.projectId))).toEqual(plain(project));
  }
});
