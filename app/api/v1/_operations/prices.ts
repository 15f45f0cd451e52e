import * as z from "zod";
import { currency, day, fields, inOrder, quantity, withRules } from "../../../../lib/entry-fields.ts";
import { unitNamed } from "../../../../lib/measure/unit-aliases.ts";
import { pricesShape, seriesShape } from "../../../../lib/show/api-prices.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, yesOrNo } from "../_answers/page.ts";

const unit = z
  .string()
  .transform((text, context) => {
    const named = unitNamed(text);
    if (named !== null) return named;
    context.issues.push({ code: "custom", message: "unknown-unit", input: text });
    return z.NEVER;
  })
  .meta({ examples: ["sheet", "square-foot", "mbf"] });

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
      currency: z
        .enum(["home", "as-seen"])
        .or(currency())
        .default("home")
        .meta({ description: 'a code, "home" or "as-seen"' }),
    }),
    [inOrder("from", "to")],
  ),
  answer: seriesShape,
});
