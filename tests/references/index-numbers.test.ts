import { describe, expect, test } from "vitest";
import { type Decimal, decimal, HUNDRED, ONE, roundHalfUp, ZERO } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { basketIndex } from "../../lib/prices/basket-index.ts";
import {
  type IndexLevel,
  levelOf,
  percentBetween,
  pointsBetween,
  realChange,
  rebased,
} from "../../lib/prices/index-levels.ts";
import {
  basketCost,
  contributions,
  fisherIndex,
  jevonsIndex,
  laspeyresIndex,
  loweIndex,
  paascheIndex,
  type TwoBasketsLine,
} from "../../lib/prices/index-numbers.ts";
import { realPrice } from "../../lib/prices/real-price.ts";
import judged from "./index-judge.json" with { type: "json" };

const to = (value: Decimal | undefined, places: number) =>
  value === undefined ? null : roundHalfUp(value, places).toFixed(places);
/** A level as a ratio, the way the tables print it. */
const ratio = (level: IndexLevel | null, places = 4) => to(level?.level.dividedBy(HUNDRED), places);
const at = (level: string): IndexLevel => ({ level: decimal(level) });

// Producer Price Index Manual (ILO, IMF, OECD, UNECE, World Bank 2004), tables 19.1 and 19.2, as adapted in Balk, Price and
// Quantity Index Numbers (2008): six products, five periods. Read; printed to four decimals unless a row says otherwise.
const PRICES = [
  ["1.0", "1.2", "1.0", "0.8", "1.0"],
  ["1.0", "3.0", "1.0", "0.5", "1.0"],
  ["1.0", "1.3", "1.5", "1.6", "1.6"],
  ["1.0", "0.7", "0.5", "0.3", "0.1"],
  ["1.0", "1.4", "1.7", "1.9", "2.0"],
  ["1.0", "0.8", "0.6", "0.4", "0.2"],
];
const QUANTITIES = [
  ["1.0", "0.8", "1.0", "1.2", "0.9"],
  ["1.0", "0.9", "1.1", "1.2", "1.2"],
  ["2.0", "1.9", "1.8", "1.9", "2.0"],
  ["1.0", "1.3", "3.0", "6.0", "12.0"],
  ["4.5", "4.7", "5.0", "5.6", "6.5"],
  ["0.5", "0.6", "0.8", "1.3", "2.5"],
];
const cell = (table: string[][], row: number, period: number) => decimal(table[row]?.[period - 1] ?? "NaN");

/** Period `now` against period `base`. */
function periods(now: number, base = 1): TwoBasketsLine[] {
  return PRICES.map((_, row) => ({
    basePrice: cell(PRICES, row, base),
    price: cell(PRICES, row, now),
    baseQuantity: cell(QUANTITIES, row, base),
    quantity: cell(QUANTITIES, row, now),
  }));
}

describe("six products over five periods (read)", () => {
  test.each([
    [2, "1.4200", "1.3824", "1.4011"],
    [3, "1.3450", "1.2031", "1.2721"],
  ])("period %i against the first: Laspeyres %s, Paasche %s, Fisher %s", (period, ...printed) => {
    const lines = periods(period);
    expect([laspeyresIndex(lines), paascheIndex(lines), fisherIndex(lines)].map((one) => ratio(one))).toEqual(
      printed,
    );
  });

  test.each([
    [1, "10.00"],
    [2, "14.10"],
    [3, "15.28"],
    [4, "17.56"],
    [5, "20.00"],
  ])("the value of period %i is %s (derived)", (period, printed) => {
    expect(to(basketCost(periods(period), "price"), 2)).toBe(printed);
  });

  test("Laspeyres of the third period against the second is 0.9609929, to seven decimals", () => {
    expect(ratio(laspeyresIndex(periods(3, 2)), 7)).toBe("0.9609929");
  });

  test("Paasche over Laspeyres less one is -0.04099992 there, to eight decimals", () => {
    const lines = periods(3, 2);
    const paasche = paascheIndex(lines)?.level ?? ZERO;
    expect(to(paasche.dividedBy(laspeyresIndex(lines)?.level ?? ZERO).minus(ONE), 8)).toBe("-0.04099992");
  });

  test("Lowe of the fourth period against the first, over the second's basket: chained it is the same", () => {
    const lowe = (now: number, base: number) =>
      loweIndex(periods(now, base).map((line, row) => ({ ...line, quantity: cell(QUANTITIES, row, 2) })));
    expect(ratio(lowe(4, 2), 6)).toBe("0.970922");
    const chained = (lowe(3, 2)?.level ?? ZERO).times(lowe(4, 3)?.level ?? ZERO).dividedBy(HUNDRED);
    expect(ratio({ level: chained }, 6)).toBe("0.970922");
  });

  test("Fisher's price index times its quantity index is the ratio of values (identity of the manual)", () => {
    for (const period of [2, 3, 4, 5]) {
      const lines = periods(period);
      const quantities = lines.map((line) => ({
        basePrice: line.baseQuantity,
        price: line.quantity,
        baseQuantity: line.basePrice,
        quantity: line.price,
      }));
      const values = (fisherIndex(lines)?.level ?? ZERO).times(fisherIndex(quantities)?.level ?? ZERO);
      const spent = basketCost(lines, "price").dividedBy(basketCost(periods(1), "price"));
      expect(to(values.dividedBy(10_000), 25)).toBe(to(spent, 25));
    }
  });

  test.each([
    [2, "1.2419"],
    [3, "0.9563"],
    [4, "0.7256"],
    [5, "0.6325"],
  ])("Jevons of period %i against the first is %s (derived)", (period, printed) => {
    expect(ratio(jevonsIndex(periods(period)))).toBe(printed);
  });

  test("chained Laspeyres: 1.4200, 1.3646, 1.3351, 1.3306 (derived)", () => {
    let chain = HUNDRED;
    const chained = [2, 3, 4, 5].map((period) => {
      chain = chain.times(laspeyresIndex(periods(period, period - 1))?.level ?? ZERO).dividedBy(HUNDRED);
      return ratio({ level: chain });
    });
    expect(chained).toEqual(["1.4200", "1.3646", "1.3351", "1.3306"]);
  });
});

describe("elementary indices", () => {
  const pairs = (all: readonly (readonly [string, string])[]) =>
    all.map(([base, now]) => ({ basePrice: decimal(base), price: decimal(now) }));

  test("four prices of potatoes: Jevons 0.9994 (derived; House of Lords, Measuring Inflation, box 4)", () => {
    const potatoes = pairs([
      ["2.00", "1.90"],
      ["2.00", "1.60"],
      ["1.80", "1.89"],
      ["2.00", "2.50"],
    ]);
    expect(ratio(jevonsIndex(potatoes))).toBe("0.9994");
  });

  test("two stores that swap their prices stand where they stood: 1.00, not 1.25 (derived)", () => {
    const swapped = pairs([
      ["10", "20"],
      ["20", "10"],
    ]);
    expect(ratio(jevonsIndex(swapped), 2)).toBe("1.00");
  });

  test("sheets, bundles and studs of a job, each alike: 104.32 (derived)", () => {
    const job = pairs([
      ["16.48", "19.97"],
      ["36.00", "37.50"],
      ["3.98", "3.58"],
    ]);
    expect(to(jevonsIndex(job)?.level, 2)).toBe("104.32");
  });
});

describe("the basket of a job (derived, exact to the printed digits)", () => {
  const JOB = [
    ["28", "16.48", "19.97"],
    ["27", "36.00", "37.50"],
    ["40", "3.98", "3.58"],
  ].map(([quantity = "", base = "", now = ""]) => ({
    quantity: decimal(quantity),
    basePrice: decimal(base),
    price: decimal(now),
  }));

  test("costs 1,592.64 and then 1,714.86: index 107.67", () => {
    expect(to(basketCost(JOB, "basePrice"), 2)).toBe("1592.64");
    expect(to(basketCost(JOB, "price"), 2)).toBe("1714.86");
    expect(to(loweIndex(JOB)?.level, 2)).toBe("107.67");
  });

  test("sheets bring +6.14 points, bundles +2.54, studs -1.00", () => {
    expect(contributions(JOB)?.map(({ points }) => to(points, 2))).toEqual(["6.14", "2.54", "-1.00"]);
  });

  test("to be shown they sum to 7.67, not to the 7.68 that rounding each alone gives", () => {
    const shown = contributions(JOB, 2) ?? [];
    expect(shown.reduce((sum, { points }) => sum.plus(points), ZERO).toFixed(2)).toBe("7.67");
    expect(shown.map(({ points }) => points.toFixed(2))).toEqual(["6.14", "2.54", "-1.01"]);
  });
});

describe("percent and points", () => {
  test("a consumer index from 239.261 to 240.236: 0.975 points, 0.4 % (read; Bureau of Labor Statistics, Perrins and Nilsen)", () => {
    const [then, now] = [at("239.261"), at("240.236")];
    expect(pointsBetween(then, now).points.toFixed()).toBe("0.975");
    expect(to(percentBetween(then, now).percent, 1)).toBe("0.4");
    expect(to(percentBetween(then, now).percent, 4)).toBe("0.4075");
    expect(to(realPrice(money("100", "USD"), then, now).amount, 2)).toBe("100.41");
  });

  test("six points over 120 are 5 %, and a contract of 1,000 becomes 1,050 (derived)", () => {
    const [then, now] = [at("120.0"), at("126.0")];
    expect(pointsBetween(then, now).points.toFixed()).toBe("6");
    expect(percentBetween(then, now).percent.toFixed()).toBe("5");
    expect(realPrice(money("1000", "CAD"), then, now).amount.toFixed(2)).toBe("1050.00");
    expect(rebased(now, then).level.toFixed(1)).toBe("105.0");
  });

  test("10,000 of 1913 are 222,447.47 of 2011 (read; the levels 9.9 and 220.223 from memory)", () => {
    expect(to(realPrice(money("10000", "USD"), at("9.9"), at("220.223")).amount, 2)).toBe("222447.47");
  });

  test("24 to 30 while the index goes from 120 to 150 is +25 % nominal and nothing real (derived)", () => {
    const nominal = percentBetween(at("24"), at("30"));
    const inflation = percentBetween(at("120"), at("150"));
    expect(nominal.percent.toFixed()).toBe("25");
    expect(realChange(nominal, inflation).percent.toFixed()).toBe("0");
    expect(realPrice(money("30", "CAD"), at("150"), at("120")).amount.toFixed(2)).toBe("24.00");
  });

  test("7 % nominal at 3 % inflation is 3.8835 % real, not 4 % (derived)", () => {
    expect(to(realChange({ percent: decimal(7) }, { percent: decimal(3) }).percent, 4)).toBe("3.8835");
  });

  test("up 50 % and down 33.33 % is back at the start; up and down 10 % is 1 % lower (derived)", () => {
    const up = levelOf(decimal("1.5"));
    expect(to(percentBetween(up, at("100")).percent, 2)).toBe("-33.33");
    expect(percentBetween(at("100"), levelOf(decimal("1.1").times("0.9"))).percent.toFixed()).toBe("-1");
  });
});

// Another program: exact fractions and roots to 60 digits (index-judge.py), printed to twelve decimals.
describe.each(judged.baskets.map((basket) => [basket.lines.length, basket] as const))(
  "a basket of %i lines by another program",
  (_, basket) => {
    const lines = basket.lines.map((line) => ({
      basePrice: decimal(line.basePrice),
      price: decimal(line.price),
      baseQuantity: decimal(line.baseQuantity),
      quantity: decimal(line.quantity),
    }));
    const digits = judged.digits;

    test("the four indices agree", () => {
      expect({
        laspeyres: to(laspeyresIndex(lines)?.level, digits),
        paasche: to(paascheIndex(lines)?.level, digits),
        fisher: to(fisherIndex(lines)?.level, digits),
        jevons: to(jevonsIndex(lines)?.level, digits),
      }).toEqual({
        laspeyres: basket.laspeyres,
        paasche: basket.paasche,
        fisher: basket.fisher,
        jevons: basket.jevons,
      });
    });

    test("the contributions agree", () => {
      const ours = contributions(lines.map((line) => ({ ...line, quantity: line.baseQuantity })));
      expect(ours?.map(({ points }) => to(points, digits))).toEqual(basket.contributions);
    });

    test("over the part known, and how large it is", () => {
      const found = basketIndex(
        lines.map((line, index) => ({
          key: String(index),
          quantity: line.baseQuantity,
          basePrice: basket.lines[index]?.gap === "base" ? null : line.basePrice,
          price: basket.lines[index]?.gap === "now" ? null : line.price,
        })),
      );
      expect(to(found.known ? found.level.level : undefined, digits)).toBe(basket.partKnown);
      expect(to(found.coverage.shareOfBaseCost ?? undefined, digits)).toBe(basket.shareOfBaseCost);
      expect(found.coverage.missing.length).toBe(basket.lines.filter(({ gap }) => gap !== "").length);
    });
  },
);
