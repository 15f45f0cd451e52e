import { amount, amountOrZero, choice, fields, flag, name, percent, withRules } from "../entry-fields.ts";

const given = (value: unknown): boolean => value !== null && value !== undefined;

/** A fee beside a price: an amount or a percent, never both, per unit or once per order (R4). Errors: missing (at amount), amount-not-expected. */
export const feeEntry = withRules(
  fields({
    name: name(),
    amount: amount().nullable().default(null),
    percent: percent().nullable().default(null),
    basis: choice(["unit", "order"]),
    freeFrom: amountOrZero().nullable().default(null),
    taxable: flag(),
  }),
  [
    { path: "amount", code: "missing", broken: (fee) => !given(fee.amount) && !given(fee.percent) },
    { path: "amount", code: "amount-not-expected", broken: (fee) => given(fee.amount) && given(fee.percent) },
  ],
);
