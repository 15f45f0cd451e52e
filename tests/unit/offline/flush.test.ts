import { expect, test } from "vitest";
import { nextBatch } from "../../../app/_offline/flush.mjs";
import type { Row } from "../../../app/_offline/log-database.ts";

function row(id: string, given: Partial<Row> = {}): Row {
  return { id, workspaceId: "one", kind: "price", said: {}, at: 0, state: "queued", ...given };
}
const ids = (rows: readonly Row[]) => nextBatch(rows).map(({ id }: Row) => id);

test("what others rest on goes first, then the older id", () => {
  const rows = [row("3"), row("9", { kind: "material" }), row("1", { kind: "bought" }), row("2")];
  expect(ids(rows)).toEqual(["9", "2", "3", "1"]);
});

test("a refused row is not sent, nor what rests on it; the others are", () => {
  const refused = row("1", { kind: "material", state: "rejected" });
  expect(ids([refused, row("2", { restsOn: ["1"] }), row("3")])).toEqual(["3"]);
});

test("one batch is of one workspace, and of a hundred rows at most", () => {
  expect(ids([row("1"), row("2", { workspaceId: "demo" }), row("3")])).toEqual(["1", "3"]);
  expect(ids(Array.from({ length: 150 }, (_, at) => row(String(at).padStart(3, "0"))))).toHaveLength(100);
});

test("a row made before the phone knew its workspace waits", () => {
  expect(ids([row("1", { workspaceId: "" })])).toEqual([]);
});
