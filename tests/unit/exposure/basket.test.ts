import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import {
  type BasketFacts,
  MOST_BASKET_DAYS,
  projectBasket,
  usualBase,
} from "../../../lib/exposure/basket.ts";
import { day, daysAgo, observation, SHEET, store, TODAY, valuation } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";
import { factsOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const STUD = someMaterial("piece", {}, { id: "stud", category: "dimensional-lumber" });
const stud = (amount: string, seenOn: ReturnType<typeof day>) =>
  observation(amount, { materialId: "stud", seenOn, per: { quantity: decimal(1), unit: "piece" } });
const BASE = daysAgo(100);
const NEEDS = [
  needOf("sheets", revisionOf(10)),
  needOf("studs", revisionOf(100, { unit: "piece" }), { materialId: "stud" }),
];
const SEEN = [
  observation("20.00", { seenOn: BASE }),
  stud("4.00", BASE),
  observation("22.00", { seenOn: daysAgo(1) }),
  stud("3.00", daysAgo(1)),
];

function basket(given: Partial<BasketFacts> = {}, base = BASE, on = TODAY) {
  const facts = factsOf({ materials: [SHEET, STUD], requirements: NEEDS, observations: SEEN });
  return projectBasket("job", on, base, { ...facts, ...given });
}
const levels = (found: ReturnType<typeof basket>) =>
  found?.points.map(
    ({ day: on, index }) => `${on} ${index.known ? index.level.level.toFixed(2) : "not known"}`,
  );

describe("a project's basket index", () => {
  test("is what is required at the going prices of the day over those of the base day", () => {
    // 10 x 22 + 100 x 3 = 520 over 10 x 20 + 100 x 4 = 600
    expect(levels(basket())?.at(-1)).toBe(`${TODAY} 86.67`);
    expect(levels(basket())?.[0]).toBe(`${BASE} 100.00`);
  });

  test("is reckoned on the base day, the first day of each month between, and the day", () => {
    expect(basket()?.points.map((point) => point.day)).toEqual([
      BASE,
      "2025-12-01",
      "2026-01-01",
      "2026-02-01",
      "2026-03-01",
      TODAY,
    ]);
  });

  test("is reckoned on 36 days at most", () => {
    const points = basket({}, day("2001-05-05"))?.points ?? [];
    expect(points.length).toBeLessThanOrEqual(MOST_BASKET_DAYS);
    expect(points.at(-1)?.day).toBe(TODAY);
  });

  test("counts waste, and pools the needs for one material", () => {
    const requirements = [
      needOf("a", revisionOf(10, { wastePercent: decimal(10) })),
      needOf("b", revisionOf(4)),
    ];
    const known = basket({ requirements })?.now.coverage.known ?? [];
    expect(known.map(({ key, quantity }) => `${key} ${quantity.toFixed()}`)).toEqual(["sheet 15"]);
  });

  test("leaves out closed needs, needs not yet said, and other projects' needs", () => {
    const requirements = [
      needOf("closed", revisionOf(10), { closedOn: daysAgo(3) }),
      needOf("later", revisionOf(10, { validFrom: daysAgo(-9) })),
      needOf("other", revisionOf(10), { projectId: "another" }),
    ];
    expect(basket({ requirements })).toBeNull();
    expect(
      basket({ requirements: [...requirements, needOf("a", revisionOf(3))] })?.now.coverage.known,
    ).toHaveLength(1);
  });

  test("takes the quantities of the day it is read on, for every day of the line", () => {
    const changed = needOf("sheets", [revisionOf(1), revisionOf(10, { validFrom: daysAgo(2) })]);
    const found = basket({ requirements: [changed] });
    expect(found?.points[0]?.index.coverage.known[0]?.quantity.toFixed()).toBe("10");
  });

  test("over the part known where a price of the base day is not known, and says which", () => {
    const observations = SEEN.filter((seen) => seen.materialId === "sheet" || seen.seenOn !== BASE);
    const found = basket({ observations });
    expect(levels(found)?.at(-1)).toBe(`${TODAY} 110.00`);
    expect(found?.now.coverage.missing).toEqual([{ key: "stud", missing: "base-price" }]);
  });

  test("is not known where no required material has both prices", () => {
    expect(basket({ observations: SEEN.slice(0, 2) })?.now.known).toBe(false);
    expect(basket({ observations: [] })?.now.known).toBe(false);
  });

  test("never rests on specials: the going price is of shelf prices", () => {
    const special = observation("1.00", { seenOn: TODAY, terms: "special" });
    expect(levels(basket({ observations: [...SEEN, special] }))).toEqual(levels(basket()));
  });

  test("values each day at its own tax", () => {
    const taxed = valuation({ stores: [store("near", { taxRegion: "CA-NS" })], recheckDays: 200 });
    const observations = [observation("20.00", { seenOn: day("2025-03-01") })];
    const found = basket(
      {
        observations,
        valuation: taxed,
        requirements: [needOf("a", revisionOf(1, { validFrom: day("2025-01-01") }))],
      },
      day("2025-03-31"),
      day("2025-04-01"),
    );
    // 20 x 1.14 over 20 x 1.15
    expect(levels(found)?.at(-1)).toBe("2025-04-01 99.13");
  });

  test("a need that cannot be read in purchase units is missing, its quantity not known", () => {
    const odd = needOf("studs", revisionOf(5, { unit: "square-metre" }), { materialId: "stud" });
    const found = basket({ requirements: [needOf("a", revisionOf(3)), odd] });
    expect(found?.now.coverage.missing).toEqual([{ key: "stud", missing: "quantity" }]);
  });

  test("does not move by what is seen after the day", () => {
    const later = stud("9.00", daysAgo(-5));
    expect(levels(basket({ observations: [...SEEN, later] }))).toEqual(levels(basket()));
  });

  test("needs a base before the day", () => {
    expect(() => basket({}, TODAY)).toThrow(RangeError);
  });
});

describe("from one day to the next", () => {
  test("points and percent are both said, and differ once the index has left 100", () => {
    const observations = [
      observation("100.00", { seenOn: daysAgo(40) }),
      observation("120.00", { seenOn: day("2026-03-01") }),
      observation("126.00", { seenOn: TODAY }),
    ];
    const points = basket({ observations, requirements: [needOf("a", revisionOf(1))] }, daysAgo(40))?.points;
    const step = points?.at(-1)?.sinceBefore;
    expect([step?.points.points.toFixed(), step?.percent.percent.toFixed()]).toEqual(["6", "5"]);
    expect(points?.[0]?.sinceBefore).toBeNull();
  });

  test("nothing is said where the two days rest on other materials", () => {
    // The stud's price of a hundred days ago is too old from the third month on; the sheet's is between two sightings.
    const observations = [
      ...SEEN.filter(({ materialId }) => materialId === "stud").slice(0, 1),
      observation("20.00", { seenOn: BASE }),
      observation("21.00", { seenOn: daysAgo(45) }),
      observation("22.00", { seenOn: daysAgo(1) }),
    ];
    const steps = basket({ observations })?.points.map(({ index, sinceBefore }) => [
      index.coverage.known.length,
      sinceBefore !== null,
    ]);
    expect(steps).toEqual([
      [2, false],
      [2, true],
      [2, true],
      [2, true],
      [1, false],
      [1, true],
    ]);
  });
});

describe("the usual base", () => {
  test("is the day the project was first planned", () => {
    const statuses = [
      { status: "live", from: daysAgo(20) },
      { status: "planned", from: daysAgo(90) },
      { status: "dropped", from: daysAgo(50) },
    ] as const;
    expect(usualBase(projectOf("job", { statuses }), TODAY)).toBe(daysAgo(90));
  });

  test("is a year before the day when the project has only begun", () => {
    expect(usualBase(projectOf("job", { statuses: [{ status: "live", from: TODAY }] }), TODAY)).toBe(
      daysAgo(365),
    );
  });
});
