import * as z from "zod";
import { fields, id, listOf } from "../../../../lib/entry-fields.ts";
import { plainBody } from "../_answers/body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { faultShape } from "../_answers/problem.ts";

/** Entries a phone may send at once; it sends a hundred. */
const MOST = 200;

export const readSnapshot = operation({
  ...bare,
  method: "GET",
  path: "/phone/snapshot",
  summary:
    "What the aisle form takes along to work without a server; whether the books still hold what they last acknowledged",
  query: fields({ workspace: id().optional(), acknowledged: id().optional() }),
  answer: z.strictObject({
    restored: z.boolean().describe("the acknowledged entry is no longer there: offer again what was sent"),
    snapshot: z.record(z.string(), z.unknown()),
  }),
});

export const sendEntries = operation({
  ...bare,
  method: "POST",
  path: "/phone/entries",
  summary: "What was entered on a phone, in any order, as often as it likes: each entry is written once",
  body: plainBody(fields({ workspaceId: id(), entries: listOf(z.unknown(), MOST) })),
  makes: true,
  answer: z.strictObject({
    accepted: z.array(z.string()).describe("ids that are in the books, by this request or an earlier one"),
    rejected: z.array(z.strictObject({ id: z.string(), errors: z.array(faultShape) })),
  }),
});
