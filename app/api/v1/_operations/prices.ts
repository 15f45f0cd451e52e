import * as z from "zod";
import { day, fields, inOrder, quantity, withRules } from "../../../../lib/entry-fields.ts";
import type { FaultCode } from "../../../../lib/fault.ts";
import { unitNamed } from "../../../../lib/measure/unit-aliases.ts";
import { isCurrencyCode } from "../../../../lib/money/currencies.ts";
import { pricesShape, seriesShape } from "../../../../lib/show/api-prices.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, yesOrNo } from "../_answers/page.ts";

/** Text read as one of what it may name, or refused with the code. */
function naming<T>(read: (text: string) => T | null, code: FaultCode) {
  return z.string().transform((text, context): T => {
    const named = read(text);
    if (named !== null) return named;
    context.issues.push({ code: "custom", message: code, input: text });
    return z.NEVER;
  });
}

const unit = naming(unitNamed, "unknown-unit").meta({ examples: ["sheet", "square-foot", "mbf"] });

const seriesCurrency = naming(
  (text) => (text === "home" || text === "as-seen" || isCurrencyCode(text) ? text : null),
  "unknown-currency",
)
  .prefault("home")
  .meta({ description: 'a code, "home" or "as-seen"; "home" when left out' });

export const readPrices = operation({
  ...bare,
  method: "GET",
  path: "/materials/{id}/prices",
  summary: "What a material costs on a day: offers in force, the best way to buy a quantity, the going price",
  query: fields({
    ...asOfQuery,
    quantity: quantity().prefault("1").meta({ description: "purchase units to buy; usually 1" }),
    acceptsUsed: yesOrNo("whether used ones will do"),
  }),
  answer: pricesShape,
});

export const readSeries = operation({
  ...bare,
  method: "GET",
  path: "/materials/{id}/series",
  summary: "Prices as seen, each all in at its own day",
  query: withRules(
    fields({
      from: day().optional(),
      to: day().optional(),
      unit: unit.optional().meta({ description: "the purchase unit when left out" }),
      currency: seriesCurrency,
    }),
    [inOrder("from", "to")],
  ),
  answer: seriesShape,
});
