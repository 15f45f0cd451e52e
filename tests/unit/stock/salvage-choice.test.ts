import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { type SalvageQuestion, salvageChoice } from "../../../lib/stock/salvage-choice.ts";
import { law } from "../../support/law.ts";
import { cad } from "../../support/stock-example.ts";

/** Twenty boards, new 12.40, half as good; two hours at 25; 30 to fetch, 15 to store; 0.4 t at 110, 20 to take away. */
const BOARDS: SalvageQuestion = {
  quantity: decimal(20),
  condition: decimal("0.5"),
  going: cad("12.40"),
  hours: decimal(2),
  hourlyRate: decimal(25),
  hauling: decimal(30),
  storage: decimal(15),
  disposal: cad(44),
  haulingAway: decimal(20),
  asking: decimal(6),
  currency: "CAD",
};
const ask = (given: Partial<SalvageQuestion> = {}) => salvageChoice({ ...BOARDS, ...given });
const totals = (given: Partial<SalvageQuestion> = {}) =>
  Object.fromEntries(ask(given).ways.map(({ choice, total }) => [choice, total?.amount.toFixed() ?? null]));

describe("keep, sell or dump", () => {
  test("comes to so much each way", () => {
    // keep 20 x 12.40 x 0.5 - 2 x 25 - 30 - 15; sell 20 x 6 - 50; dump - 44 - 20
    expect(totals()).toEqual({ keep: "29", sell: "70", dump: "-64" });
  });

  test("the better one is said with how much it is better than the next", () => {
    const { better } = ask();
    expect([better?.choice, better?.over, better?.by.amount.toFixed()]).toEqual(["sell", "keep", "41"]);
    const alone = ask({ asking: null }).better;
    expect([alone?.choice, alone?.over, alone?.by.amount.toFixed()]).toEqual(["keep", "dump", "93"]);
  });

  test("what is not known makes its way not known, by name, and is compared with nothing", () => {
    const { ways, better } = ask({ going: null, storage: null });
    expect(ways[0]).toMatchObject({ total: null, unknown: ["replacement", "storage"] });
    expect([better?.choice, better?.over]).toEqual(["sell", "dump"]);
    expect(ask({ going: null, asking: null }).better).toBeNull();
  });

  test("every line is rounded once and the totals are sums of the lines", () => {
    expect(totals({ quantity: decimal(3), going: cad("0.335"), condition: decimal(1) }).keep).toBe("-93.99");
  });

  test("at a tie what is kept stays", () => {
    const none = { hours: decimal(0), hauling: decimal(0), storage: decimal(0) };
    expect(ask({ ...none, asking: decimal("6.2") }).better?.choice).toBe("keep");
  });
});

describe("laws of the comparison", () => {
  const share = fc.integer({ min: 1, max: 1000 }).map((n) => decimal(n).dividedBy(1000));
  const amount = fc.integer({ min: 0, max: 100_000 }).map((n) => decimal(n).dividedBy(100));
  const total = (given: Partial<SalvageQuestion>, choice: string) =>
    ask(given).ways.find((way) => way.choice === choice)?.total?.amount ?? decimal(0);

  test("a better condition never makes keeping worth less, and leaves dumping alone", () => {
    law(
      fc.property(share, share, (one, other) => {
        const [worse, finer] = one.lessThan(other) ? [one, other] : [other, one];
        const gains = total({ condition: finer }, "keep").minus(total({ condition: worse }, "keep"));
        expect(gains.isNegative() && !gains.isZero()).toBe(false);
        expect(total({ condition: finer }, "dump").toFixed()).toBe("-64");
      }),
    );
  });

  test("a higher disposal fee makes dumping worse by exactly that much, and changes nothing else", () => {
    law(
      fc.property(amount, amount, (fee, more) => {
        const dearer = { disposal: cad(fee.plus(more)) };
        const falls = total({ disposal: cad(fee) }, "dump").minus(total(dearer, "dump"));
        expect(falls.toFixed()).toBe(more.toFixed());
        expect(total(dearer, "keep").toFixed()).toBe("29");
      }),
    );
  });

  test("the better one is never worse than any other known way", () => {
    law(
      fc.property(share, amount, amount, fc.option(amount), (condition, hauling, fee, asking) => {
        const { ways, better } = ask({ condition, hauling, disposal: cad(fee), asking });
        const best = ways.find((way) => way.choice === better?.choice)?.total?.amount ?? decimal(0);
        for (const way of ways) expect(way.total?.amount.greaterThan(best) ?? false).toBe(false);
      }),
    );
  });
});
