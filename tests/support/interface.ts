import { afterAll, beforeAll, expect } from "vitest";
import type * as z from "zod";
import { problemShape } from "../../app/api/v1/_answers/problem.ts";
import { type Served, served } from "./served.ts";

/** An answer as it came over HTTP. */
export type Answer = Readonly<{ status: number; type: string; headers: Headers; json: unknown }>;
type Sent = Readonly<Record<string, string>>;

/** The JSON interface of a program of one's own, asked over HTTP. Paths stand below /api/v1. */
export type Interface = Readonly<{
  address: () => string;
  ask: (method: string, path: string, body?: unknown, headers?: Sent) => Promise<Answer>;
  /** Text as it is, for bodies that are no JSON. */
  send: (method: string, path: string, body: BodyInit, headers?: Sent) => Promise<Answer>;
  read: <S extends z.ZodType>(shape: S, path: string) => Promise<z.output<S>>;
  /** A create that makes something new. */
  make: <S extends z.ZodType>(shape: S, path: string, body: unknown) => Promise<z.output<S>>;
  /** A change, or a create that answers with what is there. */
  change: <S extends z.ZodType>(
    shape: S,
    method: string,
    path: string,
    body?: unknown,
  ) => Promise<z.output<S>>;
  /** A request that is refused, checked to be a whole RFC 9457 problem of that status. */
  refused: (status: number, method: string, path: string, body?: unknown) => Promise<Refused>;
}>;

/** A problem, and its faults as "path: code" in their order. */
export type Refused = Readonly<{ detail: string; faults: readonly string[]; headers: Headers }>;

export function problemOf(answer: Answer, status: number): Refused {
  expect([answer.status, answer.type]).toEqual([status, "application/problem+json"]);
  const problem = problemShape.parse(answer.json);
  expect(problem.status).toBe(status);
  const faults = problem.errors.map(({ path, code }) => `${path}: ${code}`);
  return { detail: problem.detail, faults, headers: answer.headers };
}

function shaped<S extends z.ZodType>(shape: S, status: number, { json, ...answer }: Answer): z.output<S> {
  expect({ status: answer.status, json }).toEqual({ status, json });
  return shape.parse(json);
}

/** Asks a program at an address. */
export function interfaceAt(address: () => string): Interface {
  const send: Interface["send"] = async (method, path, body, headers = {}) => {
    const response = await fetch(`${address()}/api/v1${path}`, {
      method,
      headers: { "content-type": "application/json", ...headers },
      ...(method === "GET" || method === "HEAD" ? {} : { body }),
    });
    const type = response.headers.get("content-type") ?? "";
    const text = await response.text();
    const json: unknown = type.includes("json") && text !== "" ? JSON.parse(text) : text;
    return { status: response.status, type, headers: response.headers, json };
  };
  const ask: Interface["ask"] = (method, path, body, headers) =>
    send(method, path, body === undefined ? "" : JSON.stringify(body), headers);
  return {
    address,
    send,
    ask,
    read: async (shape, path) => shaped(shape, 200, await ask("GET", path)),
    make: async (shape, path, body) => shaped(shape, 201, await ask("POST", path, body)),
    change: async (shape, method, path, body) => shaped(shape, 200, await ask(method, path, body)),
    refused: async (status, method, path, body) => problemOf(await ask(method, path, body), status),
  };
}

/** For one test file: a program of its own on an empty workspace, started before its tests and stopped after. */
export function ownInterface(): Interface {
  let web: Served | undefined;
  beforeAll(async () => {
    web = await served();
  });
  afterAll(() => web?.stop());
  return interfaceAt(() => {
    if (web === undefined) throw new Error("the program is asked before it is started: ask inside a test");
    return web.address;
  });
}
