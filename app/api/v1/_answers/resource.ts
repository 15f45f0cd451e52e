import type * as z from "zod";
import { todayIn } from "../../../../lib/calendar/local-date.ts";
import { ownerWorkspace } from "../../../../lib/data/workspaces.ts";
import { isDatabaseDown } from "../../../_forms/database-down.ts";
import { caller } from "../../../_gate/caller.ts";
import { readAs } from "./body.ts";
import type { Asked, Operation, Outcome } from "./operation.ts";
import { idsOf, type Parts } from "./parts.ts";
import { faulty, NOT_THERE, type Problem, problem, problemResponse, SIGN_IN_FIRST } from "./problem.ts";
import { ONE_MEGABYTE, readJson, tooBig } from "./read-body.ts";

/** Next hands over no parts where the address has none. */
type Context = Readonly<{ params: Promise<Parts | undefined> }>;
type Handler = (request: Request, context: Context) => Promise<Response>;

/** An operation with the code that answers it. */
export type Deed = Readonly<{
  method: Operation["method"];
  answer: (request: Request, parts: Parts) => Promise<Response>;
}>;

/** Joins an operation to its code: what is read is what the operation says, typed. */
export function does<B, Q extends z.ZodType, A extends z.ZodType>(
  operation: Operation<B, Q, A>,
  answer: (asked: Asked<B, Q>) => Promise<Outcome<z.output<A>>>,
): Deed {
  return {
    method: operation.method,
    answer: async (request, parts) => {
      const ids = idsOf(parts);
      if (ids === null) return problemResponse(NOT_THERE);
      const read = await readRequest(operation, request);
      if ("status" in read) return problemResponse(read);
      const who = await caller();
      if (who === null || who.role === "nobody") return problemResponse(SIGN_IN_FIRST);
      const workspace = await ownerWorkspace();
      const outcome = await answer({
        ...read,
        scope: {
          workspaceId: workspace.id,
          actor: who.person?.name ?? "interface",
          readOnly: who.role === "reader",
        },
        workspace,
        today: todayIn(workspace.timeZone, new Date()),
        part: (name) => namedPart(ids, name),
      });
      return "value" in outcome
        ? Response.json(outcome.value, answerInit(outcome.status))
        : problemResponse(outcome);
    },
  };
}

/** One deed for an address with a word in it, e.g. {happened}: the deed that word names; another word names nothing. */
export function byWord(name: string, method: Deed["method"], deeds: ReadonlyMap<string, Deed>): Deed {
  return {
    method,
    answer: async (request, parts) =>
      deeds.get(String(parts[name]))?.answer(request, parts) ?? problemResponse(NOT_THERE),
  };
}

function namedPart(ids: ReadonlyMap<string, string>, name: string): string {
  const id = ids.get(name);
  if (id === undefined) throw new Error(`the address has no part called ${name}`);
  return id;
}

function answerInit(status: number): ResponseInit {
  return { status, headers: { "cache-control": "no-store" } };
}

async function readRequest<B, Q extends z.ZodType>(
  { query, body }: Operation<B, Q>,
  request: Request,
): Promise<Readonly<{ query: z.output<Q>; body: B }> | Problem> {
  const raw =
    body.limit === 0 ? ({ ok: true, value: null, bytes: 0 } as const) : await readJson(request, body.limit);
  if (!raw.ok) return raw.problem;
  if (raw.bytes > ONE_MEGABYTE && !isMany(raw.value)) return tooBig(ONE_MEGABYTE);
  const asked = readAs(query, Object.fromEntries(new URL(request.url).searchParams));
  const sent = body.read(raw.value);
  if (asked.ok && sent.ok) return { query: asked.value, body: sent.value };
  return faulty([...(asked.ok ? [] : asked.faults), ...(sent.ok ? [] : sent.faults)]);
}

function isMany(raw: unknown): boolean {
  return typeof raw === "object" && raw !== null && "entries" in raw;
}

const DATABASE_DOWN =
  "The database cannot be reached. Send the same request again later: under an id of your own a repeat does no harm.";

async function safely(answer: () => Promise<Response>): Promise<Response> {
  try {
    return await answer();
  } catch (error) {
    if (isDatabaseDown(error)) return problemResponse(problem(503, DATABASE_DOWN), { "retry-after": "5" });
    console.error(error);
    return problemResponse(problem(500, "This is a mistake of the program. What was being written was not."));
  }
}

type Handlers = Readonly<Record<"GET" | "POST" | "PUT" | "PATCH" | "DELETE", Handler>>;

/** The handlers of one address: each deed under its method; every other method answers 405. */
export function resource(...deeds: readonly Deed[]): Handlers {
  const allow = deeds.map((deed) => deed.method).join(", ");
  const handler = (method: string): Handler => {
    const deed = deeds.find((one) => one.method === method);
    return (request, context) =>
      safely(async () => {
        if (deed === undefined)
          return problemResponse(problem(405, `This address knows ${allow}.`), { allow });
        return deed.answer(request, (await context.params) ?? {});
      });
  };
  return {
    GET: handler("GET"),
    POST: handler("POST"),
    PUT: handler("PUT"),
    PATCH: handler("PATCH"),
    DELETE: handler("DELETE"),
  };
}
