import { dayNumber, type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { chance } from "./chance.ts";
import { demoId } from "./id.ts";
import { DEMO_MATERIALS, materialId } from "./materials.ts";
import { KESTREL_HILL, LANTERN_LINE, MILL_ROAD } from "./stores.ts";

/** One price as the interface takes it, with the id it is sent under. */
export type DemoPrice = Readonly<
  { id: string; materialId: string; storeId: string; seenOn: string; terms: string } & Record<string, unknown>
>;

const DAYS = 3 * 365;
const WEEKS = Math.ceil(DAYS / 7) + 1;
const STORE_OF = { M: MILL_ROAD, K: KESTREL_HILL, L: LANTERN_LINE } as const;
const LEVEL_OF = { M: 1, K: 1.035, L: 0.66 } as const;

/** Weekly price levels around 1, oldest first: a slow walk pulled back to 1, with a rise every spring. */
function levels(key: string, today: LocalDate): number[] {
  const next = chance(`level ${key}`);
  const start = dayNumber(today) - DAYS;
  let log = (next() - 0.5) * 0.1;
  return Array.from({ length: WEEKS }, (_, week) => {
    log += (next() + next() - 1) * 0.035 - log * 0.02;
    const season = 0.045 * Math.sin((2 * Math.PI * (start + week * 7 - 60)) / 365.25);
    return Math.exp(log + season);
  });
}

/** Cents as a tag shows them: ending in 8. */
function tag(cents: number): string {
  const whole = Math.max(8, Math.round((cents - 8) / 10) * 10 + 8);
  return `${Math.floor(whole / 100)}.${String(whole % 100).padStart(2, "0")}`;
}

/** Shelf sightings of three years ending today, and now and then a special, for every material a store carries. */
export function demoPrices(today: LocalDate): DemoPrice[] {
  return DEMO_MATERIALS.flatMap((material) =>
    [...material.carried.stores].flatMap((letter) =>
      sightings(material, letter as keyof typeof STORE_OF, today),
    ),
  );
}

function sightings(
  material: (typeof DEMO_MATERIALS)[number],
  letter: keyof typeof STORE_OF,
  today: LocalDate,
): DemoPrice[] {
  const { key, purchaseUnit, carried } = material;
  const next = chance(`seen ${key} ${letter}`);
  const level = levels(key, today);
  const currency = letter === "L" ? "USD" : "CAD";
  const per = { quantity: "1", unit: purchaseUnit };
  const made: DemoPrice[] = [];
  const rhythm = letter === "L" ? carried.everyDays * 2 : carried.everyDays;
  for (
    let ago = Math.floor(next() * Math.min(rhythm, rhythm < 60 ? 12 : 60));
    ago < DAYS;
    ago += Math.round(rhythm * (0.7 + next() * 0.6))
  ) {
    const seenOn = plusDays(today, -ago);
    const cents =
      carried.cents *
      LEVEL_OF[letter] *
      (level[Math.floor((DAYS - ago) / 7)] ?? 1) *
      (1 + (next() - 0.5) * 0.02);
    const base = {
      materialId: materialId(key),
      storeId: STORE_OF[letter],
      seenOn,
      currency,
      per,
      taxIncluded: false,
    };
    made.push({ ...base, id: demoId(`price ${key} ${letter} ${ago}`), amount: tag(cents), terms: "shelf" });
    if (ago > 20 && next() < 0.09) {
      const until = plusDays(seenOn, 6 + Math.floor(next() * 8));
      made.push({
        ...base,
        id: demoId(`special ${key} ${letter} ${ago}`),
        amount: tag(cents * (0.8 + next() * 0.1)),
        terms: "special",
        until,
      });
    }
  }
  return made;
}

/** What stands in the stores just now besides the shelf: a special, a clearance, a break, a quote, used windows, one sold out. */
export function demoOffersNow(today: LocalDate): DemoPrice[] {
  const price = (
    name: string,
    key: string,
    storeId: string,
    ago: number,
    amount: string,
    terms: string,
    more: Record<string, unknown>,
  ): DemoPrice => ({
    id: demoId(`now ${name}`),
    materialId: materialId(key),
    storeId,
    seenOn: plusDays(today, -ago),
    amount,
    currency: "CAD",
    per: {
      quantity: "1",
      unit: DEMO_MATERIALS.find((material) => material.key === key)?.purchaseUnit ?? "each",
    },
    taxIncluded: false,
    terms,
    ...more,
  });
  return [
    price("ply12 special", "ply12", MILL_ROAD, 2, "27.48", "special", { until: plusDays(today, 3) }),
    price("door36 clearance", "door36", KESTREL_HILL, 1, "311.00", "clearance", {
      maxQuantity: "1",
      until: plusDays(today, 9),
    }),
    price("shingle break", "shingle", KESTREL_HILL, 5, "30.88", "quantity-break", { minQuantity: "42" }),
    price("windows quote", "win3648", KESTREL_HILL, 4, "378.00", "quote", {
      until: plusDays(today, 12),
      minQuantity: "4",
      fees: [{ name: "Delivery", amount: "85.00", basis: "order", freeFrom: "2500.00", taxable: true }],
    }),
    price("studs three", "stud", KESTREL_HILL, 6, "11.88", "special", {
      per: { quantity: "3", unit: "piece" },
      until: plusDays(today, 6),
    }),
    {
      id: demoId("now strap none"),
      materialId: materialId("strap"),
      storeId: MILL_ROAD,
      seenOn: plusDays(today, 0),
      terms: "none-left",
      currency: "CAD",
      per: { quantity: "1", unit: "piece" },
      taxIncluded: false,
    },
  ];
}
