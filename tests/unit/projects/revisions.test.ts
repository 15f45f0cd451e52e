import { describe, expect, test } from "vitest";
import { PROJECT_STATUSES } from "../../../lib/projects/project.ts";
import { isBuying, isClosedOn, revisionOn, statusOn } from "../../../lib/projects/revisions.ts";
import { day } from "../../support/price-example.ts";
import { needOf, projectOf, revisionOf } from "../../support/stock-example.ts";

const need = needOf("a", [
  revisionOf(10, { validFrom: day("2026-01-10") }),
  revisionOf(14, { validFrom: day("2026-02-01") }),
]);
const asked = (on: string) => revisionOn(need, day(on))?.quantity.toNumber() ?? null;

describe("a revision", () => {
  test("holds from its own day", () => {
    expect(asked("2026-02-01")).toBe(14);
  });

  test("does not change what was asked for the day before", () => {
    expect(asked("2026-01-31")).toBe(10);
  });

  test("is not there before the first", () => {
    expect(asked("2026-01-09")).toBe(null);
  });

  test("recorded later wins over one of the same day", () => {
    const twice = needOf("a", [revisionOf(10), revisionOf(11)]);
    expect(revisionOn(twice, day("2026-01-01"))?.quantity.toNumber()).toBe(11);
  });
});

describe("a project's status", () => {
  const project = projectOf("job", {
    statuses: [
      { status: "planned", from: day("2026-01-01") },
      { status: "live", from: day("2026-02-01") },
      { status: "finished", from: day("2026-05-01") },
    ],
  });

  test("is the newest on or before the day", () => {
    expect(["2026-01-31", "2026-02-01", "2026-06-01"].map((on) => statusOn(project, day(on)))).toEqual([
      "planned",
      "live",
      "finished",
    ]);
  });

  test("is none before the project was", () => {
    expect(statusOn(project, day("2025-12-31"))).toBe(null);
  });

  test("lets a planned or a live job buy, and no other", () => {
    expect(([null, ...PROJECT_STATUSES] as const).map((s) => isBuying(s))).toEqual([
      false,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe("a closed requirement", () => {
  const closed = needOf("a", revisionOf(1), { closedOn: day("2026-03-01") });

  test("is closed on its day and after", () => {
    expect(isClosedOn(closed, day("2026-03-01"))).toBe(true);
  });

  test("was open the day before", () => {
    expect(isClosedOn(closed, day("2026-02-28"))).toBe(false);
  });
});
