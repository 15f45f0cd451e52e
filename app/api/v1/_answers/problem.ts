import * as z from "zod";
import { FAULT_CODES, type Fault } from "../../../../lib/fault.ts";
import { spoken } from "./fault-words.ts";

/** Why nothing was done, as RFC 9457 has it. */
export type Problem = Readonly<{ status: ProblemStatus; detail: string; faults: readonly Fault[] }>;

export const TITLES = {
  400: "Bad Request",
  401: "Unauthorized",
  403: "Forbidden",
  404: "Not Found",
  405: "Method Not Allowed",
  409: "Conflict",
  413: "Content Too Large",
  415: "Unsupported Media Type",
  422: "Unprocessable Content",
  500: "Internal Server Error",
  503: "Service Unavailable",
} as const;
export type ProblemStatus = keyof typeof TITLES;

export const faultShape = z.strictObject({
  path: z.string().describe("the field, dotted; empty for the request itself"),
  code: z.enum(FAULT_CODES),
  message: z.string(),
  values: z.record(z.string(), z.string()).optional(),
});

export const problemShape = z.strictObject({
  type: z.literal("about:blank"),
  title: z.enum(Object.values(TITLES)),
  status: z.int(),
  detail: z.string(),
  errors: z.array(faultShape).describe("every fault of the request"),
});

/** A problem, with every fault that led to it. */
export function problem(status: ProblemStatus, detail: string, faults: readonly Fault[] = []): Problem {
  return { status, detail, faults };
}

/** The faults of what was sent. */
export function faulty(faults: readonly Fault[]): Problem {
  return problem(422, "This cannot be accepted; nothing was changed. Every fault is listed.", faults);
}

export const NO_SUCH_ADDRESS = problem(404, "The interface has no such address; see /api/v1/openapi.json.");
export const SIGN_IN_FIRST = problem(401, "Sign in first: this address needs to know who calls.");
export const NOT_THERE = problem(404, "There is nothing here under this id.");

/** A problem as an answer. */
export function problemResponse({ status, detail, faults }: Problem, headers: HeadersInit = {}): Response {
  const body: z.output<typeof problemShape> = {
    type: "about:blank",
    title: TITLES[status],
    status,
    detail,
    errors: faults.map(spoken),
  };
  return new Response(JSON.stringify(body), {
    status,
    headers: { ...headers, "content-type": "application/problem+json", "cache-control": "no-store" },
  });
}
