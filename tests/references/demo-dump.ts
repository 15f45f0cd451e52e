import { localDate } from "../../lib/calendar/local-date.ts";
import { DEMO_MATERIALS, materialId } from "../../prisma/demo/materials.ts";
import { demoOffersNow, demoPrices } from "../../prisma/demo/prices.ts";
import { demoProjects, demoRequirements } from "../../prisma/demo/projects.ts";
import { demoRates } from "../../prisma/demo/rates.ts";
import { demoEvents, demoLots } from "../../prisma/demo/stock.ts";
import { DEMO_STORES } from "../../prisma/demo/stores.ts";

// The demo as plain data for the judge: node --import tsx tests/references/demo-dump.ts 2026-06-30 | python3 tests/references/demo-judge.py
const day = localDate(process.argv[2] ?? "2026-06-30");
const all = {
  day,
  stores: DEMO_STORES,
  materials: DEMO_MATERIALS.map((material) => ({ ...material, id: materialId(material.key) })),
  prices: [...demoPrices(day), ...demoOffersNow(day)],
  projects: demoProjects(day),
  requirements: demoRequirements(day),
  lots: demoLots(day),
  events: demoEvents(day),
  rates: demoRates(day),
};
process.stdout.write(JSON.stringify(all));
