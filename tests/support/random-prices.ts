import * as fc from "fast-check";
import { type LocalDate, plusDays } from "../../lib/calendar/local-date.ts";
import { decimal } from "../../lib/decimal.ts";
import { type Observation, TERMS, type Terms } from "../../lib/prices/observation.ts";
import { daysAgo, fee, observation, rate, store, TODAY, valuation } from "./price-example.ts";

/** One store at home with tax and a discount, one without either, one across the border that is confirmed, one that is not. */
export const MARKET = valuation({
  stores: [
    store("near", {
      taxRegion: "CA-NS",
      discounts: [{ category: null, percent: decimal(5), from: daysAgo(60), until: null }],
    }),
    store("far"),
    store("across", {
      taxRegion: "US-ME",
      currency: "USD",
      importCharges: [
        {
          name: "duty",
          percent: decimal(3),
          perOrder: null,
          recoverable: false,
          from: null,
          until: null,
        },
      ],
    }),
    store("unsure", { taxRegion: "US-ME", currency: "USD" }),
  ],
  rates: [0, 5, 12, 30, 60, 90].map((ago) => rate(daysAgo(ago), "USD", "CAD", `1.3${ago}`)),
});

/** How a sighting may stand: anything a store may show, up to `longest` days ago and `ahead` days ahead. */
export function somePrice(longest = 120, ahead = 0): fc.Arbitrary<Observation> {
  return fc
    .record({
      storeId: fc.constantFrom("near", "near", "far", "far", "across", "unsure"),
      terms: fc.constantFrom<Terms>("shelf", "shelf", "shelf", ...TERMS),
      cents: fc.integer({ min: 100, max: 9999 }),
      ago: fc.integer({ min: -ahead, max: longest }),
      pieces: fc.constantFrom(1, 1, 1, 3),
      min: fc.constantFrom(null, null, null, 4, 10),
      span: fc.option(fc.integer({ min: 0, max: 30 })),
      pack: fc.option(fc.integer({ min: 2, max: 4 }), { freq: 4 }),
      starts: fc.option(fc.integer({ min: -3, max: 6 }), { freq: 5 }),
      lasts: fc.option(fc.integer({ min: 6, max: 50 })),
      taxIncluded: fc.boolean(),
      eco: fc.option(fc.integer({ min: 1, max: 50 }), { freq: 4 }),
    })
    .map((given): Observation => {
      const { storeId, terms, cents, ago, pieces, min, span, pack, starts, lasts, taxIncluded, eco } = given;
      const seenOn: LocalDate = plusDays(TODAY, -ago);
      const at = (days: number | null) => (days === null ? null : plusDays(seenOn, days));
      const gone = terms === "none-left";
      return observation(gone ? null : decimal(cents).dividedBy(100).toFixed(2), {
        storeId,
        seenOn,
        terms,
        currency: storeId === "near" || storeId === "far" ? "CAD" : "USD",
        per: { quantity: decimal(pieces), unit: "sheet" },
        taxIncluded,
        minQuantity: min === null ? null : decimal(min),
        maxQuantity: span === null ? null : decimal((min ?? 1) + span),
        packSize: pack === null ? null : decimal(pack),
        from: at(starts),
        until: at(lasts),
        fees:
          eco === null || gone ? [] : [fee("eco", { amount: decimal(eco).dividedBy(100), taxable: true })],
      });
    });
}
