import type * as z from "zod";
import type { LocalDate } from "../../../../lib/calendar/local-date.ts";
import type { Scope } from "../../../../lib/data/client.ts";
import type { Workspace } from "../../../../lib/data/workspaces.ts";
import { fields } from "../../../../lib/entry-fields.ts";
import { type Body, noBody } from "./body.ts";
import type { Problem } from "./problem.ts";

export type Method = "GET" | "POST" | "PATCH" | "DELETE";

/** One thing the interface does, described once: the same table reads requests and writes the OpenAPI document. */
export type Operation<
  B = unknown,
  Q extends z.ZodType = z.ZodType,
  A extends z.ZodType = z.ZodType,
> = Readonly<{
  method: Method;
  /** Below /api/v1, e.g. "/stores/{id}". */
  path: string;
  summary: string;
  query: Q;
  body: Body<B>;
  answer: A;
  /** Answers 201 when something was made. */
  makes: boolean;
}>;

/** A request as its operation reads it. */
export type Asked<B, Q extends z.ZodType> = Readonly<{
  scope: Scope;
  workspace: Workspace;
  /** Today in the workspace's time zone. */
  today: LocalDate;
  query: z.output<Q>;
  body: B;
  /** An id of the path, e.g. of {id}: a UUID in small letters. */
  part: (name: string) => string;
}>;

export type Outcome<T> = Readonly<{ status: 200 | 201; value: T }> | Problem;

export const noQuery = fields({});

/** What an operation without query and body takes. */
export const bare = { query: noQuery, body: noBody, makes: false };

/** An operation with the types of what it takes and answers kept. */
export function operation<B, Q extends z.ZodType, A extends z.ZodType>(
  described: Operation<B, Q, A>,
): Operation<B, Q, A> {
  return described;
}
