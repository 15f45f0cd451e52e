import { day, fields, id, inOrder, withRules } from "../../../../lib/entry-fields.ts";
import { savingsShape } from "../../../../lib/show/api-savings.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery } from "../_answers/page.ts";

export const readSavings = operation({
  ...bare,
  method: "GET",
  path: "/savings",
  summary:
    "Cost avoidance by buying ahead, catching a special or reusing salvage: realised between two days, unrealised as of a day",
  query: withRules(
    fields({ ...asOfQuery, from: day().optional(), to: day().optional(), projectId: id().optional() }),
    [inOrder("from", "to")],
  ),
  answer: savingsShape,
});
