import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { workspaceEntry } from "../../../lib/tax/workspace-entry.ts";

function codes(given: unknown): string[] {
  const parsed = workspaceEntry.safeParse(given);
  return parsed.success ? [] : faultsOf(parsed.error).map((fault) => `${fault.path} ${fault.code}`);
}

test("a registration is a tax's name, or a name with its days", () => {
  expect(workspaceEntry.parse({ registeredFor: ["HST", { tax: "QST", from: "2026-01-01" }] })).toEqual({
    registeredFor: [
      { tax: "HST", from: null, until: null },
      { tax: "QST", from: "2026-01-01", until: null },
    ],
  });
});

test("a money rate is a percentage, a dated percentage, or none", () => {
  expect(workspaceEntry.parse({ moneyRate: null })).toEqual({ moneyRate: null });
  expect(workspaceEntry.parse({ moneyRate: "7" }).moneyRate).toMatchObject({ from: null });
  expect(workspaceEntry.parse({ moneyRate: { percent: "7.5", from: "2026-01-01" } }).moneyRate).toMatchObject(
    {
      from: "2026-01-01",
    },
  );
  expect(codes({ moneyRate: 7 })).toEqual(["moneyRate not-an-object"]);
  expect(codes({ moneyRate: "700" })).toEqual(["moneyRate.percent percent-out-of-range"]);
});

test("a zone the world does not have, a currency it does not have and an unknown field are all named", () => {
  expect(
    codes({ timeZone: "America/Heronville", homeCurrency: "CAN", recheckDays: 0, colour: "red" }),
  ).toEqual([
    "homeCurrency unknown-currency",
    "recheckDays not-positive",
    "timeZone unknown-time-zone",
    "colour unknown-field",
  ]);
});

test("one source of rates is chosen per currency", () => {
  expect(workspaceEntry.parse({ rateSources: { USD: "central bank" } })).toEqual({
    rateSources: { USD: "central bank" },
  });
  expect(codes({ rateSources: { USD: "" } })).toEqual(["rateSources.USD missing"]);
});
