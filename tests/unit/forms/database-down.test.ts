import { expect, test } from "vitest";
import { isDatabaseDown } from "../../../app/_forms/database-down.ts";

const withCode = (code: string, message = "failed") => Object.assign(new Error(message), { code });

test.each(["ECONNREFUSED", "ECONNRESET", "57P01", "57P03", "08006", "P1001", "P1017", "P2024"])(
  "the code %s means that the database cannot be reached",
  (code) => {
    expect(isDatabaseDown(withCode(code))).toBe(true);
  },
);

test("the code the server gave is found where the client keeps it", () => {
  const adapter = Object.assign(new Error("failed"), { cause: { originalCode: "3D000" } });
  const raw = Object.assign(withCode("P2010"), { meta: { driverAdapterError: adapter } });
  expect(isDatabaseDown(raw)).toBe(true);
});

test("what the client's adapter says of a cut connection is read too", () => {
  const raw = Object.assign(withCode("P2010"), {
    meta: { driverAdapterError: new Error("ConnectionClosed") },
  });
  expect(isDatabaseDown(raw)).toBe(true);
});

test("a cause deep inside is found", () => {
  const outer = new Error("the query failed", {
    cause: new Error("inner", { cause: withCode("ECONNREFUSED") }),
  });
  expect(isDatabaseDown(outer)).toBe(true);
});

test("all of several attempts that failed together are looked at", () => {
  expect(isDatabaseDown(new AggregateError([withCode("ECONNREFUSED")]))).toBe(true);
});

test("a server that is just shutting down says so in words", () => {
  expect(isDatabaseDown(new Error("FATAL: the database system is shutting down"))).toBe(true);
});

test("a refused row is no database that is down", () => {
  expect(isDatabaseDown(withCode("23514", "a check was violated"))).toBe(false);
  expect(isDatabaseDown("ECONNREFUSED")).toBe(false);
});
