import { demoId } from "./id.ts";

/** The demo's four invented stores, as the interface takes them. */
export const DEMO_STORES = [
  {
    id: demoId("store Mill Road Yard"),
    name: "Mill Road Yard",
    taxRegion: "CA-NS",
    currency: "CAD",
    tripCost: "14.00",
    distanceKm: "9",
    pricesIncludeTax: false,
    discounts: [{ category: "dimensional-lumber", percent: "3", from: "2024-06-01" }],
  },
  {
    id: demoId("store Kestrel Hill Supply"),
    name: "Kestrel Hill Supply",
    taxRegion: "CA-NS",
    currency: "CAD",
    tripCost: "22.00",
    distanceKm: "22",
    pricesIncludeTax: false,
  },
  {
    id: demoId("store Lantern Line Lumber"),
    name: "Lantern Line Lumber",
    taxRegion: "US-ME",
    currency: "USD",
    tripCost: "96.00",
    distanceKm: "310",
    pricesIncludeTax: false,
    importCharges: [
      { name: "HST at the border", percent: "15", recoverable: true, until: "2025-03-31" },
      { name: "HST at the border", percent: "14", recoverable: true, from: "2025-04-01" },
    ],
  },
  {
    id: demoId("store Second Cut Reuse Centre"),
    name: "Second Cut Reuse Centre",
    taxRegion: "CA-NS",
    currency: "CAD",
    tripCost: "16.00",
    distanceKm: "14",
    pricesIncludeTax: true,
  },
] as const;

export const MILL_ROAD = DEMO_STORES[0].id;
export const KESTREL_HILL = DEMO_STORES[1].id;
export const LANTERN_LINE = DEMO_STORES[2].id;
export const SECOND_CUT = DEMO_STORES[3].id;

/** The sales tax of the store across the border, defined by the workspace. The rate is from memory: the demo says so. */
export const DEMO_REGION = {
  code: "US-ME",
  name: "Maine",
  components: [
    {
      name: "Sales tax",
      ratePercent: "5.5",
      from: "2013-10-01",
      recoverable: false,
      evidence: "from memory",
    },
  ],
} as const;
