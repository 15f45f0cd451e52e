import { describe, expect, test } from "vitest";
import { savings } from "../../../lib/savings/savings.ts";
import { day, observation, TODAY } from "../../support/price-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const a = { requirementId: "a" };
const events = [
  eventOf("allocated", 3, "2026-01-06", a),
  eventOf("drawn", 1, "2026-01-20", a),
  eventOf("sold", 2, "2026-02-10", { amount: cad(50) }),
  eventOf("written-off", 1, "2026-02-10"),
  eventOf("returned", 1, "2026-02-20", { amount: cad(17) }),
];
const facts = factsOf({
  requirements: [needOf("a", revisionOf(10))],
  lots: [lotOf(10, 200)],
  events,
  observations: [observation("24.00", { seenOn: day("2026-01-04") }), observation("26.00")],
});
const kinds = (from: string | null, until: string | null, on = TODAY) =>
  savings(from === null ? null : day(from), until === null ? null : day(until), on, facts).rows.map(
    (row) => row.kind,
  );

describe("the savings report", () => {
  test("has a row for each thing that left, by day, and what is held last", () => {
    expect(kinds(null, null)).toEqual(["drawn", "sold", "written-off", "returned", "held"]);
  });

  test("of a period has what left in it, both ends counted, and what is held", () => {
    expect(kinds("2026-01-20", "2026-02-10")).toEqual(["drawn", "sold", "written-off", "held"]);
    expect(kinds("2026-01-21", "2026-02-09")).toEqual(["held"]);
  });

  test("as of a day knows nothing that left later, and holds what had not left", () => {
    expect(kinds(null, null, day("2026-01-19"))).toEqual(["held"]);
  });

  test("as of a day before the lot was ordered has no row", () => {
    expect(kinds(null, null, day("2026-01-04"))).toEqual([]);
  });

  test("contains all four kinds in what is realised, each also apart", () => {
    const { realised, byKind } = savings(null, null, TODAY, facts);
    // drawn 24 - 20, sold 50 - 40, written off -20, returned 17 - 20
    expect(realised).toMatchObject({ rows: 4, saving: cad(-9) });
    expect(
      [byKind.drawn, byKind.sold, byKind["written-off"], byKind.returned].map((kind) => kind?.saving),
    ).toEqual([cad(4), cad(10), cad(-20), cad(-3)]);
  });

  test("keeps what is unrealised apart from what is realised", () => {
    expect(savings(null, null, TODAY, facts).unrealised).toMatchObject({ rows: 1, saving: cad(12) });
  });

  test("has no kind that did not happen", () => {
    expect(savings(null, null, day("2026-01-19"), facts).byKind.sold).toBe(undefined);
  });

  test("counts what was moved to another project there", () => {
    const moved = [
      ...events.slice(0, 1),
      eventOf("released", 3, "2026-01-10", a),
      eventOf("allocated", 3, "2026-01-10", { requirementId: "b" }),
    ];
    const requirements = [...facts.requirements, needOf("b", revisionOf(3), { projectId: "other" })];
    const projects = [projectOf("job"), projectOf("other")];
    const { rows } = savings(null, null, TODAY, { ...facts, events: moved, requirements, projects });
    expect(rows.map((row) => `${row.projectId} ${row.quantity}`)).toEqual(["other 3"]);
  });
});
