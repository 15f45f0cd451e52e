import { describe, expect, test } from "vitest";
import { billFigures } from "../../../lib/bills/bill-figures.ts";
import { decimal } from "../../../lib/decimal.ts";
import {
  billedFee,
  billOf,
  billTerms,
  cents,
  deposit,
  figuresOf,
  GST,
  HST,
  handedBack,
  lineAt,
  PST,
  priceFor,
  QST,
} from "../../support/bill-example.ts";
import { component } from "../../support/price-example.ts";
import { lumber } from "../../support/some-material.ts";

const total = (figures: { total: { amount: { toFixed(places: number): string } } }) =>
  figures.total.amount.toFixed(2);
const shown = (bill: ReturnType<typeof billOf>, ...components: (typeof GST)[]) =>
  cents(figuresOf(bill, billTerms(components)).taxes.map(({ amount }) => amount));

describe("a line", () => {
  test("multiplies the exact price: 38 at 3 for 20.00 are 253.33, not 38 times 6.67", () => {
    expect(total(figuresOf(billOf([lineAt(0, 38, { price: priceFor("20.00", 3) })])))).toBe("253.33");
  });

  test("is rounded once, after the percent and the amount off it", () => {
    const line = lineAt("9.99", 3, { discount: { percent: decimal(10), amount: decimal("0.02") } });
    const [read] = figuresOf(billOf([line])).lines;
    expect(cents(read === undefined ? [] : [read.net, read.discount])).toEqual(["26.95", "3.02"]);
  });

  test("priced by the thousand board feet is read through its nominal size", () => {
    const stud = { ...lumber("2x4", "8 ft"), id: "stud" };
    const line = lineAt(0, 100, { materialId: "stud", unit: "piece", price: priceFor("750", 1, "mbf") });
    expect(total(figuresOf(billOf([line]), billTerms([], [stud])))).toBe("400.00");
  });

  test("priced in a unit it cannot be read in makes no figures", () => {
    expect(billFigures(billOf([lineAt(0, 1, { price: priceFor("750", 1, "mbf") })]), billTerms())).toBeNull();
  });

  test("bears its own fees per unit, and only the taxed ones bear tax", () => {
    const fees = [
      billedFee("levy", { amount: decimal("0.50") }),
      billedFee("stewardship", { amount: decimal("0.25"), taxable: false }),
    ];
    const figures = figuresOf(billOf([lineAt("10", 4, { fees })]), billTerms([GST]));
    expect(cents(figures.taxes.map(({ amount }) => amount))).toEqual(["2.10"]);
    expect(total(figures)).toBe("45.10");
  });
});

describe("the taxes", () => {
  const three = billOf([lineAt("5.50"), lineAt("5.50"), lineAt("5.46")]);

  test("are 2.15 rounded per line and 2.14 rounded on the bill", () => {
    expect(shown({ ...three, taxRounding: "per-line" }, HST)).toEqual(["2.15"]);
    expect(shown({ ...three, taxRounding: "per-bill" }, HST)).toEqual(["2.14"]);
  });

  test("are each rounded by itself, or together and laid back on the components", () => {
    const bill = billOf([lineAt("31.95")]);
    const parts = [component("federal part", "5"), component("provincial part", "8")];
    expect(shown(bill, ...parts)).toEqual(["1.60", "2.56"]);
    expect(shown({ ...bill, taxRounding: "per-bill-together" }, ...parts)).toEqual(["1.60", "2.55"]);
    expect(shown({ ...bill, taxRounding: "per-line-together" }, ...parts)).toEqual(["1.60", "2.55"]);
  });

  test("leave out the components a line is exempt of, and one that no line bears is not shown", () => {
    const exempt = lineAt("100", 1, { exemptFrom: ["PST"] });
    expect(shown(billOf([exempt, lineAt("10")]), GST, PST)).toEqual(["5.50", "0.70"]);
    expect(shown(billOf([exempt]), GST, PST)).toEqual(["5.00"]);
  });

  test("leave out what the material itself is exempt of", () => {
    const wool = { ...lumber("2x4"), id: "wool", exemptFrom: ["PST"] };
    const line = lineAt("100", 1, { materialId: "wool" });
    const figures = figuresOf(billOf([line]), billTerms([GST, PST], [wool]));
    expect(figures.taxes.map(({ component: { name } }) => name)).toEqual(["GST"]);
  });

  test("inside the prices are taken out of them and change no total", () => {
    const figures = figuresOf(billOf([lineAt("114.98")], { taxIncluded: true }), billTerms([GST, QST]));
    expect(cents(figures.taxes.map(({ amount }) => amount))).toEqual(["5.00", "9.98"]);
    expect(total(figures)).toBe("114.98");
  });

  test("every cent of them is borne by a line, a fee or a deposit", () => {
    const bill = billOf([lineAt("5.50"), lineAt("5.50"), lineAt("5.46")], {
      fees: [billedFee("delivery", { amount: decimal("35.05") })],
    });
    const { lines, fees, taxes } = figuresOf(bill, billTerms([HST]));
    const borne = [...lines, ...fees].reduce((sum, { tax }) => sum.plus(tax.amount), decimal(0));
    expect(borne.toFixed(2)).toBe(cents(taxes.map(({ amount }) => amount))[0]);
  });
});

describe("beside the lines", () => {
  test("a fee may be a percent of the lines together", () => {
    const fees = [billedFee("assessment", { percent: decimal(1), taxable: false })];
    expect(total(figuresOf(billOf([lineAt("42.55"), lineAt("10")], { fees })))).toBe("53.08");
  });

  test("a deposit is cash and no cost until it is forfeited", () => {
    const held = figuresOf(billOf([lineAt("100")], { deposits: [deposit(50)] }));
    const lost = figuresOf(billOf([lineAt("100")], { deposits: [deposit(50, { forfeited: true })] }));
    expect(cents([held.total, held.refundable, held.cost])).toEqual(["150.00", "50.00", "100.00"]);
    expect(cents([lost.total, lost.refundable, lost.cost])).toEqual(["150.00", "0.00", "150.00"]);
  });

  test("a deposit that was taxed is forfeited with its tax", () => {
    const terms = billTerms([HST]);
    const held = figuresOf(billOf([lineAt("100")], { deposits: [deposit(50, { taxable: true })] }), terms);
    expect(cents([held.total, held.cost])).toEqual(["169.50", "113.00"]);
  });

  test("a rebate claimed by mail lessens the cost and neither the tax nor the total", () => {
    const rebates = [{ name: "mail-in", amount: decimal(10) }];
    const figures = figuresOf(billOf([lineAt("100")], { rebates }), billTerms([HST]));
    expect(cents([figures.total, figures.cost])).toEqual(["113.00", "103.00"]);
  });

  test("cash is rounded to five cents on what is due, never on the cost", () => {
    const bill = billOf([lineAt("1.83"), lineAt("2.86")], { paidInCash: true });
    const figures = figuresOf(bill, billTerms([GST]));
    expect(cents([figures.total, figures.due, figures.cost])).toEqual(["4.92", "4.90", "4.92"]);
  });
});

describe("goods handed back", () => {
  const returned = (taxable: boolean) =>
    lineAt("20", 2, { returned: handedBack({ percent: decimal(15), taxable }) });

  test("refund the price less the restocking fee, and the tax on that", () => {
    expect(total(figuresOf(billOf([returned(true)]), billTerms([HST])))).toBe("-38.42");
  });

  test("refund the whole tax where the restocking fee bears none", () => {
    expect(total(figuresOf(billOf([returned(false)]), billTerms([HST])))).toBe("-39.20");
  });

  test("stand on one bill with what was bought instead", () => {
    const figures = figuresOf(billOf([returned(true), lineAt("50")]), billTerms([HST]));
    expect(cents([figures.subtotal, figures.total])).toEqual(["16.00", "18.08"]);
  });
});
