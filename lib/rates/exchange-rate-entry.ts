import type * as z from "zod";
import { currency, day, fields, name, rate, withRules } from "../entry-fields.ts";
import type { ExchangeRate } from "./exchange-rate.ts";

/** One published rate: 1 base = rate quote on a date. */
export const exchangeRateEntry = withRules(
  fields({ date: day(), base: currency(), quote: currency(), rate: rate(), source: name() }),
  [
    {
      path: "quote",
      code: "same-currency",
      broken: ({ base, quote }) => typeof base === "string" && base === quote,
    },
  ],
).transform(({ date, ...entry }): ExchangeRate => ({ ...entry, on: date }));
export type ExchangeRateEntry = z.output<typeof exchangeRateEntry>;
