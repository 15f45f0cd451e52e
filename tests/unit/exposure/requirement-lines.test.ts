import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Project, Requirement } from "../../../lib/projects/project.ts";
import type { StockEvent } from "../../../lib/stock/lot.ts";
import { day, SHEET, TODAY } from "../../support/price-example.ts";
import { cad, eventOf, factsOf, lotOf, needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

type Given = { events?: readonly StockEvent[]; project?: Project; material?: typeof SHEET };

/** The one line of a requirement, with a lot of thirty sheets for 600.00 beside it. */
function line(
  need: Requirement,
  { events = [], project = projectOf("job"), material = SHEET }: Given = {},
  on = TODAY,
) {
  const lots = [lotOf(30, 600)];
  const facts = factsOf({ requirements: [need], lots, events, projects: [project], materials: [material] });
  return exposure(on, facts).projects[0]?.lines[0];
}
const allocated = (quantity: number) => eventOf("allocated", quantity, "2026-01-06", { requirementId: "a" });
const drawn = (quantity: number) => eventOf("drawn", quantity, "2026-01-07", { requirementId: "a" });
const need = needOf("a", revisionOf(20));

describe("what is open", () => {
  test("is what is required less what is locked in, rounded up once to whole units", () => {
    const wasteful = needOf("a", revisionOf(53, { wastePercent: decimal(8) }));
    expect(line(wasteful, { events: [allocated(27)] })?.open.toFixed()).toBe("31");
  });

  test("counts what was drawn and what is still allocated, each once", () => {
    expect(line(need, { events: [allocated(12), drawn(5)] })).toMatchObject({
      allocated: decimal(7),
      drawn: decimal(5),
      lockedIn: decimal(12),
      open: decimal(8),
    });
  });

  test("does not count free stock: stock counts by being allocated", () => {
    expect(line(need)?.open.toNumber()).toBe(20);
  });

  test("grows again by what is released", () => {
    const released = eventOf("released", 4, "2026-01-08", { requirementId: "a" });
    expect(line(need, { events: [allocated(12), released] })?.open.toNumber()).toBe(12);
  });

  test("is never below zero: the rest is surplus, and its cost stays locked in", () => {
    expect(line(need, { events: [allocated(23)] })).toMatchObject({
      open: decimal(0),
      surplus: decimal(3),
      lockedCost: cad(460),
    });
  });

  test("has no surplus by rounding up alone", () => {
    expect(line(needOf("a", revisionOf("19.5")), { events: [allocated(19)] })).toMatchObject({
      open: decimal(1),
      surplus: decimal(0),
    });
  });

  test("is rounded to a thousandth where nobody buys whole ones", () => {
    const lumber = { ...SHEET, purchaseUnit: "msf" } as const;
    const some = needOf("a", revisionOf("1.23450", { unit: "msf" }));
    expect(line(some, { material: lumber })?.open.toFixed()).toBe("1.235");
  });
});

describe("a requirement that is closed", () => {
  const closed = needOf("a", revisionOf(20), { closedOn: day("2026-02-01") });

  test("has nothing open from that day on", () => {
    expect(line(closed, { events: [allocated(5)] })?.open.toNumber()).toBe(0);
  });

  test("was open until then", () => {
    expect(line(closed, {}, day("2026-01-31"))?.open.toNumber()).toBe(20);
  });

  test("keeps what is locked in and what it cost", () => {
    expect(line(closed, { events: [allocated(5)] })?.lockedCost.amount.toNumber()).toBe(100);
  });

  test("is not unpriced by a quantity that cannot be read: nothing is to be bought", () => {
    const odd = revisionOf(20, { unit: "kilogram" });
    expect(line(needOf("a", odd))?.unpriced).toBe(true);
    expect(line(needOf("a", odd, { closedOn: day("2026-02-01") }))?.unpriced).toBe(false);
  });
});

describe("a project's status", () => {
  const status = (name: "planned" | "live" | "finished" | "dropped") =>
    line(need, { project: projectOf("job", { statuses: [{ status: name, from: day("2026-01-01") }] }) })
      ?.open;

  test("planned or live leaves things open", () => {
    expect([status("planned")?.toNumber(), status("live")?.toNumber()]).toEqual([20, 20]);
  });

  test("finished or dropped leaves nothing open", () => {
    expect([status("finished")?.toNumber(), status("dropped")?.toNumber()]).toEqual([0, 0]);
  });
});

describe("a revision", () => {
  const revised = needOf("a", [revisionOf(20), revisionOf(26, { validFrom: day("2026-02-01") })]);

  test("changes what is open from its day", () => {
    expect([line(revised, {}, day("2026-01-31")), line(revised)].map((one) => one?.open.toNumber())).toEqual([
      20, 26,
    ]);
  });

  test("before its first a requirement is not there", () => {
    expect(
      line(
        revised,
        { project: projectOf("job", { statuses: [{ status: "live", from: day("2025-01-01") }] }) },
        day("2025-12-31"),
      ),
    ).toBe(undefined);
  });
});

test("a quantity that cannot be read is a remark, with nothing open and nothing guessed", () => {
  expect(line(needOf("a", revisionOf(20, { unit: "kilogram" })))).toMatchObject({
    open: decimal(0),
    unpriced: true,
    remarks: ["weight-unknown"],
  });
});
