import { expect, test } from "vitest";
import { emptySnapshot } from "../../../app/_offline/empty-snapshot.ts";
import type { Row } from "../../../app/_offline/log-database.ts";
import { rowsSince, sinceOf, withMade } from "../../../app/_offline/since.ts";

const TAKEN = "2026-03-02T12:00:00Z";
const snapshot = {
  ...emptySnapshot(new Date(TAKEN)),
  takenAt: TAKEN,
  workspace: { id: "one", kind: "owner", name: "One", timeZone: "UTC" },
} as const;

function row(id: string, kind: Row["kind"], said: Row["said"], given: Partial<Row> = {}): Row {
  return { id, workspaceId: "one", kind, said, at: 1, state: "queued", ...given };
}
const price = (id: string, amount: string) =>
  row(id, "price", {
    entry: {
      ...{ materialId: "sheet", storeId: "near", seenOn: "2026-03-02", terms: "shelf", amount },
      ...{ currency: "CAD", per: { quantity: "3", unit: "sheet" } },
    },
  });

test("what waits counts beside the snapshot, and what was acknowledged after it; nothing refused, nothing of another workspace", () => {
  const at = (seconds: number) => Date.parse(TAKEN) + seconds * 1000;
  const rows = rowsSince(
    {
      outbox: [
        price("3", "1"),
        { ...price("4", "1"), state: "rejected" },
        { ...price("5", "1"), workspaceId: "demo" },
      ],
      acknowledged: [
        { ...price("1", "1"), acknowledgedAt: at(-5) },
        { ...price("2", "1"), acknowledgedAt: at(5) },
      ],
    },
    snapshot,
  );
  expect(rows.map(({ id }) => id)).toEqual(["2", "3"]);
});

test("a price on the phone is read as the books will read it", () => {
  const [seen] = sinceOf([price("1", "20.00")]).seen;
  expect(seen?.amount?.amount.toFixed(2)).toBe("20.00");
  expect(seen?.per.quantity.toFixed()).toBe("3");
});

test("taken back it is gone, brought back it is there; what was bought is taken off its need", () => {
  const back = (id: string, taken: boolean) => row(id, "take-back", { observationId: "1", taken });
  expect([...sinceOf([back("2", true)]).gone]).toEqual(["1"]);
  expect([...sinceOf([back("2", true), back("3", false)]).gone]).toEqual([]);
  const bought = (id: string, quantity: string) =>
    row(id, "bought", { entry: { quantity }, requirementId: "need" });
  expect(
    sinceOf([bought("4", "2"), bought("5", "3")])
      .bought.get("need")
      ?.toFixed(),
  ).toBe("5");
});

test("a store made on the phone is in the list before the server knows it, and there once when it does", () => {
  const made = { id: "s", name: "Mill Road Yard" } as Row["made"];
  const rows = [row("s", "store", {}, { made })];
  expect(withMade(snapshot, rows).stores.map(({ id }) => id)).toEqual(["s"]);
  const known = { ...snapshot, stores: withMade(snapshot, rows).stores };
  expect(withMade(known, rows).stores).toHaveLength(1);
});
