import { expect, test } from "vitest";
import { faultsOf } from "../../../lib/fault.ts";
import { projectEntry, projectPatch } from "../../../lib/projects/project-entry.ts";

test("a project is planned until said otherwise and may have no budget", () => {
  expect(projectEntry.parse({ name: "Heron Lane workshop" })).toEqual({
    name: "Heron Lane workshop",
    status: "planned",
    statusFrom: null,
    budget: null,
    note: null,
  });
});

test("a status of its own making and a negative budget are refused together", () => {
  const parsed = projectEntry.safeParse({ name: "Heron Lane workshop", status: "paused", budget: "-1" });
  expect(parsed.success ? [] : faultsOf(parsed.error)).toEqual([
    { path: "status", code: "unknown-choice" },
    { path: "budget", code: "not-positive" },
  ]);
});

test("a change names only what changes", () => {
  expect(projectPatch.parse({ budget: null })).toEqual({ budget: null });
});
