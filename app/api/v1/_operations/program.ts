import * as z from "zod";
import { bare, operation } from "../_answers/operation.ts";

export const readHealth = operation({
  ...bare,
  method: "GET",
  path: "/health",
  summary: "Whether the program and its database work; 503 when the database cannot be reached",
  answer: z.strictObject({
    ok: z.boolean(),
    database: z.string().describe("what answers, and its version"),
    migrations: z.strictObject({ applied: z.int(), newest: z.string().nullable() }),
    version: z.string().describe("of the program"),
  }),
});

export const readDocument = operation({
  ...bare,
  method: "GET",
  path: "/openapi.json",
  summary: "This document",
  answer: z.record(z.string(), z.unknown()),
});
