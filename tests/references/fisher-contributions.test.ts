import { describe, expect, test } from "vitest";
import { decimal, HUNDRED, ONE, roundHalfUp, ZERO } from "../../lib/decimal.ts";
import { fisherContributions } from "../../lib/prices/fisher-contributions.ts";
import { contributions, fisherIndex, type TwoBasketsLine } from "../../lib/prices/index-numbers.ts";

// Producer Price Index Manual (ILO, IMF, OECD, UNECE, World Bank 2004), table 19.1, as adapted in Balk, Price and Quantity
// Index Numbers (2008): six products, the second period against the first; what each contributes to Fisher's index. Read;
// printed to eight decimals of a ratio. The formula is not printed with the table as we have it: of those tried, only the
// one with logarithmic weights gives all six to all eight places (the averaged basket gives 0.01782865 for the first).
const TABLE = [
  ["1.2", "1.0", "0.8", "0.01782904"],
  ["3.0", "1.0", "0.9", "0.18814917"],
  ["1.3", "2.0", "1.9", "0.05792820"],
  ["0.7", "1.0", "1.3", "-0.03414299"],
  ["1.4", "4.5", "4.7", "0.18217457"],
  ["0.8", "0.5", "0.6", "-0.01088796"],
] as const;
const lines: TwoBasketsLine[] = TABLE.map(([price, baseQuantity, quantity]) => ({
  basePrice: ONE,
  price: decimal(price),
  baseQuantity: decimal(baseQuantity),
  quantity: decimal(quantity),
}));

describe("contributions to Fisher's index of six products (read)", () => {
  const found = (fisherContributions(lines) ?? []).map(({ points }) => points.dividedBy(HUNDRED));

  test.each(TABLE.map(([, , , printed], at) => [at + 1, printed] as const))(
    "product %i brings %s",
    (product, printed) => {
      expect(roundHalfUp(found[product - 1] ?? ZERO, 8).toFixed(8)).toBe(printed);
    },
  );

  test("together they bring 0.4011, what the index moves by, to the twentieth place", () => {
    const sum = found.reduce((so, part) => so.plus(part), ZERO);
    expect(roundHalfUp(sum, 4).toFixed(4)).toBe("0.4011");
    const change = (fisherIndex(lines)?.level ?? ZERO).dividedBy(HUNDRED).minus(ONE);
    expect(roundHalfUp(sum, 20).toFixed()).toBe(roundHalfUp(change, 20).toFixed());
  });

  // Naive: the contributions of the base's basket, which make Laspeyres and not Fisher.
  test("they are not those of the base's basket", () => {
    const laspeyres = contributions(lines.map((line) => ({ ...line, quantity: line.baseQuantity }))) ?? [];
    const first = laspeyres[0]?.points.dividedBy(HUNDRED);
    expect([first?.toFixed(8), (first ?? ZERO).equals(found[0] ?? ZERO)]).toEqual(["0.02000000", false]);
  });
});
