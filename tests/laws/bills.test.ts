import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apportion } from "../../lib/bills/apportion.ts";
import { type Bill, type BilledLine, SHARE_BASES, TAX_ROUNDINGS } from "../../lib/bills/bill.ts";
import { linePaid } from "../../lib/bills/line-paid.ts";
import { costOfLine } from "../../lib/bills/line-refund.ts";
import { lineShares } from "../../lib/bills/line-shares.ts";
import { reconciliation } from "../../lib/bills/reconciliation.ts";
import { type Decimal, decimal, roundHalfUp, ZERO } from "../../lib/decimal.ts";
import { money } from "../../lib/money/money.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import type { TaxComponent } from "../../lib/tax/region.ts";
import { isRecovered, type TaxAmount } from "../../lib/tax/tax.ts";
import {
  billedFee,
  billOf,
  billTerms,
  deposit,
  figuresOf,
  handedBack,
  lineAt,
} from "../support/bill-example.ts";
import { law } from "../support/law.ts";
import { component, region, store, valuation } from "../support/price-example.ts";
import { someMaterial } from "../support/some-material.ts";
import { lotOf } from "../support/stock-example.ts";

const cents = (most = 100_000) =>
  fc.integer({ min: 1, max: most }).map((value) => decimal(value).dividedBy(100));
const components: fc.Arbitrary<TaxComponent[]> = fc
  .array(fc.integer({ min: 0, max: 20_000 }), { maxLength: 3 })
  .map((rates) => rates.map((rate, at) => component(`tax ${at}`, decimal(rate).dividedBy(1000).toFixed())));
const material = someMaterial("each", { weight: "3 lb" }, { id: "thing" });

const line: fc.Arbitrary<BilledLine> = fc
  .record({
    price: cents(),
    quantity: fc.integer({ min: 1, max: 60 }),
    off: fc.option(fc.integer({ min: 0, max: 99 })),
    exempt: fc.boolean(),
    fee: fc.option(fc.record({ amount: cents(500), taxable: fc.boolean() })),
    returned: fc.option(fc.record({ percent: fc.integer({ min: 0, max: 100 }), taxable: fc.boolean() }), {
      freq: 5,
    }),
    named: fc.boolean(),
  })
  .map(({ price, quantity, off, exempt, fee, returned, named }) =>
    lineAt(price, quantity, {
      materialId: named ? "thing" : null,
      discount: off === null ? null : { percent: decimal(off), amount: null },
      exemptFrom: exempt ? ["tax 1"] : [],
      fees: fee === null ? [] : [billedFee("levy", fee)],
      returned:
        returned === null
          ? null
          : handedBack({ percent: decimal(returned.percent), taxable: returned.taxable }),
    }),
  );

const bill: fc.Arbitrary<Bill> = fc
  .record({
    lines: fc.array(line, { minLength: 1, maxLength: 7 }),
    fees: fc.array(fc.record({ amount: cents(), taxable: fc.boolean() }), { maxLength: 3 }),
    held: fc.array(fc.record({ amount: cents(), taxable: fc.boolean(), forfeited: fc.boolean() }), {
      maxLength: 2,
    }),
    rebate: fc.option(cents(500)),
    taxRounding: fc.constantFrom(...TAX_ROUNDINGS),
    shareBy: fc.constantFrom(...SHARE_BASES),
    taxIncluded: fc.boolean(),
  })
  .map(({ lines, fees, held, rebate, ...rest }) =>
    billOf(lines, {
      ...rest,
      fees: fees.map((fee) => billedFee("delivery", fee)),
      deposits: held.map((one) => deposit(one.amount, one)),
      rebates: rebate === null ? [] : [{ name: "by mail", amount: rebate }],
    }),
  );

const total = (values: readonly Decimal[]) => values.reduce((sum, value) => sum.plus(value), ZERO);

describe("a bill", () => {
  test("is laid on its lines without losing a cent, however it is rounded and shared", () => {
    law(
      fc.property(bill, components, (some, among) => {
        const terms = billTerms(among, [material]);
        const figures = figuresOf(some, terms);
        const shares = lineShares(some, terms, figures) ?? [];
        expect(total(shares.map((share) => share.total.amount)).toFixed()).toBe(
          figures.cost.amount.toFixed(),
        );
        expect(shares.every((share) => share.total.amount.decimalPlaces() <= 2)).toBe(true);
      }),
    );
  });

  test("makes lots that were paid, together, what it cost a buyer who gets no tax back", () => {
    law(
      fc.property(bill, components, (some, among) => {
        const terms = billTerms(among, [material]);
        const figures = figuresOf(some, terms);
        const shares = lineShares(some, terms, figures) ?? [];
        for (const [at, share] of shares.entries()) {
          const read = figures.lines[at];
          if (read === undefined || some.lines[at]?.returned !== null) continue;
          const lot = linePaid(some, read, share);
          const taxes = lot.taxIncluded ? [] : (lot.taxes ?? []).map(({ amount }) => amount);
          const paid = total([lot.amount, ...lot.fees.map(({ amount }) => amount ?? ZERO), ...taxes]);
          expect(roundHalfUp(paid, 9).toFixed(2)).toBe(share.total.amount.toFixed(2));
        }
      }),
    );
  });

  test("makes lots whose costs, with the lines of no lot, are its total less what comes back of it and of its taxes", () => {
    const registeredFor = fc.subarray(["tax 0", "tax 1", "tax 2"]);
    law(
      fc.property(bill, components, registeredFor, (some, among, names) => {
        const terms = billTerms(among, [material]);
        const figures = figuresOf(some, terms);
        const shares = lineShares(some, terms, figures) ?? [];
        const registrations = names.map((tax) => ({ tax, from: null, until: null }));
        const recovered = (one: TaxComponent) => isRecovered(one, registrations, some.on);
        const buyer = valuation({
          regions: [region("CA-ZZ", among)],
          stores: [store("near", { taxRegion: "CA-ZZ" })],
          registrations,
        });
        const costs = some.lines.map((one, at) => {
          const [read, share] = [figures.lines[at], shares[at]];
          if (read === undefined || share === undefined) throw new Error(`no share of line ${at}`);
          if (one.returned !== null || one.materialId === null)
            return costOfLine(read, share, recovered).amount;
          const paid = linePaid(some, read, share);
          const lot = lotOf(1, 0, { paid, materialId: "thing", orderedOn: some.on, storeId: "near" });
          const cost = lotCost(lot, material, buyer);
          return cost.known ? cost.cost.amount : decimal("NaN");
        });
        const refundable = figures.deposits.filter((_, at) => some.deposits[at]?.forfeited === false);
        const onCost = (taxes: readonly TaxAmount[]) =>
          total(taxes.filter((one) => recovered(one.component)).map(({ amount }) => amount.amount));
        const back = onCost(figures.taxes).minus(total(refundable.map(({ taxes }) => onCost(taxes))));
        const expected = figures.total.amount
          .minus(figures.refundable.amount)
          .minus(figures.rebates.amount)
          .minus(back);
        expect(roundHalfUp(total(costs), 9).toFixed()).toBe(expected.toFixed());
      }),
    );
  });

  test("of a total reckoned by its own way reconciles to it", () => {
    law(
      fc.property(bill, components, (some, among) => {
        const terms = billTerms(among, [material]);
        const figures = figuresOf(some, terms);
        const printed = { ...some, printedTotal: figures.total.amount };
        expect(reconciliation(printed, terms, figures).state).toBe("reconciled");
      }),
    );
  });

  test("shows taxes whose cents are all borne by something on it", () => {
    law(
      fc.property(bill, components, (some, among) => {
        const { lines, fees, deposits, taxes } = figuresOf(some, billTerms(among, [material]));
        const borne = total([...lines, ...fees, ...deposits].map(({ tax }) => tax.amount));
        expect(borne.toFixed()).toBe(total(taxes.map(({ amount }) => amount.amount)).toFixed());
      }),
    );
  });
});

describe("tax on a bill", () => {
  const prices = fc.array(cents(), { minLength: 1, maxLength: 9 });
  const shown = (bases: readonly Decimal[], among: readonly TaxComponent[], given: Partial<Bill>) =>
    figuresOf(
      billOf(
        bases.map((base) => lineAt(base)),
        given,
      ),
      billTerms(among),
    ).taxes.map(({ amount }) => amount.amount);

  test("per line and per bill differ by at most half a cent a line in each component", () => {
    law(
      fc.property(prices, components, (bases, among) => {
        const perBill = shown(bases, among, { taxRounding: "per-bill" });
        for (const [at, perLine] of shown(bases, among, { taxRounding: "per-line" }).entries())
          expect(
            perLine
              .minus(perBill[at] ?? ZERO)
              .abs()
              .lessThanOrEqualTo(decimal("0.005").times(bases.length)),
          ).toBe(true);
      }),
    );
  });

  // Half a cent per component on the way out; half a cent per component, and the rates on the first, on the way back.
  test("taken out of a total and put on again gives the total within the cents rounded", () => {
    law(
      fc.property(cents(), components, (amount, among) => {
        const held = total(shown([amount], among, { taxIncluded: true }));
        const base = amount.minus(held);
        const again = base.plus(total(shown([base], among, {})));
        const rates = total(among.map(({ ratePercent }) => ratePercent.dividedBy(100)));
        const bound = decimal("0.005").times(among.length).times(rates.plus(2));
        expect(again.minus(amount).abs().lessThanOrEqualTo(bound)).toBe(true);
      }),
    );
  });
});

test("a total laid back on exact parts sums to it, each part within the cents it is away from them and one more", () => {
  const exact = fc.array(fc.integer({ min: -1_000_000, max: 1_000_000 }), { minLength: 1, maxLength: 9 });
  law(
    fc.property(exact, fc.integer({ min: -3, max: 3 }), (ten_thousandths, away) => {
      const parts = ten_thousandths.map((value) => decimal(value).dividedBy(10_000));
      const given = roundHalfUp(total(parts), 2).plus(decimal(away).dividedBy(100));
      const laid = apportion(money(given, "CAD"), parts).map(({ amount }) => amount);
      expect(total(laid).toFixed()).toBe(given.toFixed());
      for (const [at, part] of laid.entries())
        expect(
          part
            .minus(parts[at] ?? ZERO)
            .abs()
            .lessThan(decimal(Math.abs(away) + 1).dividedBy(100)),
        ).toBe(true);
    }),
  );
});
