import * as z from "zod";
import { fields } from "../../../../lib/entry-fields.ts";
import { stockEventShape } from "../../../../lib/show/api-lot.ts";
import type { StockEventKind } from "../../../../lib/stock/lot.ts";
import {
  STOCK_EVENT_FIELDS,
  stockCountEntry,
  stockEventEntry,
} from "../../../../lib/stock/stock-event-entry.ts";
import { type Body, isObject, jsonSchema, readAs } from "../_answers/body.ts";
import { type New, newBody, readNew, withId } from "../_answers/new-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { yesOrNo } from "../_answers/page.ts";
import { ONE_MEGABYTE } from "../_answers/read-body.ts";

/** What can happen to a lot, as the address says it, and the kind of event it makes. */
export const HAPPENED = {
  allocations: "allocated",
  releases: "released",
  draws: "drawn",
  returns: "returned",
  sales: "sold",
  "write-offs": "written-off",
  moves: "moved",
  "storage-money": "stored",
} as const satisfies Readonly<Record<string, StockEventKind>>;
export type Happened = keyof typeof HAPPENED;
export const HAPPENINGS = Object.keys(HAPPENED) as readonly Happened[];

/** What can be undone: a count too, which found something or missed something. */
export type Undoable = Happened | "counts";
export const UNDOABLES: readonly Undoable[] = [...HAPPENINGS, "counts"];
export const KINDS_OF: Readonly<Record<Undoable, readonly StockEventKind[]>> = {
  allocations: ["allocated"],
  releases: ["released"],
  draws: ["drawn"],
  returns: ["returned"],
  sales: ["sold"],
  "write-offs": ["written-off"],
  moves: ["moved"],
  "storage-money": ["stored"],
  counts: ["found", "missing"],
};

const SUMMARIES: Readonly<Record<Happened, string>> = {
  allocations: "Sets a quantity of a lot aside for a requirement",
  releases: "Gives an allocated quantity free again",
  draws: "Takes a quantity into use: of the requirement's own allocation first, then of what is free",
  returns: "Gives a quantity back for a refund",
  sales: "Sells a quantity",
  "write-offs": "Writes a quantity off: broken, spoilt, lost",
  moves: "Moves a quantity to another place (placeId null: on site), at a cost of its own where there is one",
  "storage-money": "What storing a lot cost on a day, borne by what is on hand on it",
};

type StockEventEntry = z.output<typeof stockEventEntry>;

function eventBody(kind: StockEventKind): Body<New<StockEventEntry>> {
  const alone = fields(STOCK_EVENT_FIELDS[kind]);
  return {
    read: (raw) =>
      readNew((entry) => {
        // The fields by themselves first: the address says the kind, the body may not.
        const read = readAs(alone, entry);
        if (!read.ok) return read;
        return readAs(stockEventEntry, { ...(isObject(entry) ? entry : {}), kind });
      }, raw),
    limit: ONE_MEGABYTE,
    schema: () => withId(jsonSchema(alone, "input")),
  };
}

/** POST of something that happened to a lot. */
export function addStockEvent(happened: Happened) {
  return operation({
    ...bare,
    method: "POST",
    path: `/lots/{id}/${happened}`,
    summary: SUMMARIES[happened],
    body: eventBody(HAPPENED[happened]),
    answer: stockEventShape,
    makes: true,
  });
}

export const addStockCount = operation({
  ...bare,
  method: "POST",
  path: "/lots/{id}/counts",
  summary: "How many of a lot are there: what was found or is missing follows from it",
  body: newBody(stockCountEntry),
  answer: z.strictObject({
    event: stockEventShape.nullable().describe("null: exactly what is in the books was counted"),
  }),
  makes: true,
});

/** DELETE of what happened undoes it. */
export function undoStockEvent(happened: Undoable) {
  return operation({
    ...bare,
    method: "DELETE",
    path: `/lots/{id}/${happened}/{eventId}`,
    summary:
      "Undoes what happened, with all that was done together with it; refused while something later needs it; can be restored",
    answer: stockEventShape,
  });
}

export function restoreStockEvent(happened: Undoable) {
  return operation({
    ...bare,
    method: "POST",
    path: `/lots/{id}/${happened}/{eventId}/restore`,
    summary: "Brings back what was undone, if there is still room for it",
    answer: stockEventShape,
  });
}

export const listStockEvents = operation({
  ...bare,
  method: "GET",
  path: "/lots/{id}/events",
  summary: "What happened to a lot, in order",
  query: fields({ undone: yesOrNo("undone ones too") }),
  answer: z.strictObject({ items: z.array(stockEventShape) }),
});
