import { beforeAll, expect, test } from "vitest";
import { localDate, plusDays } from "../../lib/calendar/local-date.ts";
import { exposure } from "../../lib/exposure/exposure.ts";
import type { ExposureFacts } from "../../lib/exposure/exposure-facts.ts";
import { goingPriceOn } from "../../lib/prices/going-price.ts";
import type { Observation } from "../../lib/prices/observation.ts";
import { offersOn } from "../../lib/prices/offers.ts";
import { savings } from "../../lib/savings/savings.ts";
import { freshDatabase } from "../support/database.ts";
import { plain, wholeHistory, withHistory } from "../support/whole-history.ts";

await freshDatabase();
const { exposureFacts, offerFacts, savingsFacts } = await import("../../lib/data/facts.ts");
const { loadDemo } = await import("../../prisma/demo/load.ts");

const TODAY = localDate("2026-06-30");
const DAYS = [0, 1, 6, 7, 8, 29, 30, 31, 45, 60, 91, 120, 200, 365, 366, 500, 900, 1100].map((ago) =>
  plusDays(TODAY, -ago),
);
let scope = { workspaceId: "", actor: "test" };
let history: Observation[] = [];

beforeAll(async () => {
  scope = { ...(await loadDemo(TODAY)), actor: "test" };
  history = await wholeHistory(scope, TODAY);
});

test.each(DAYS)("exposure on %s is the same from the candidates as from the whole history", async (day) => {
  const facts = await exposureFacts(scope, day);
  const whole = withHistory(facts, history, day);
  expect(plain(exposure(day, facts))).toEqual(plain(exposure(day, whole)));
  expect(facts.observations.length).toBeLessThanOrEqual(whole.observations.length);
});

test.each(DAYS)("every offer in force on %s and the going prices are among the offer facts", async (day) => {
  const facts = await offerFacts(scope, day);
  const whole = withHistory(facts, history, day);
  for (const material of facts.materials.values()) {
    const offers = (from: ExposureFacts) =>
      offersOn(day, from.observations, material, facts.valuation).offers;
    expect(plain(offers(facts))).toEqual(plain(offers(whole)));
    const going = (from: ExposureFacts) => goingPriceOn(day, from.observations, material, facts.valuation);
    expect(plain(going(facts))).toEqual(plain(going(whole)));
  }
});

test.each(DAYS)("one project's exposure on %s is the same from its own facts as from all", async (day) => {
  const all = exposure(day, await exposureFacts(scope, day));
  expect(all.projects.length + (day < plusDays(TODAY, -300) ? 1 : 0)).toBeGreaterThan(0);
  for (const project of all.projects) {
    const own = exposure(day, await exposureFacts(scope, day, project.projectId));
    expect(plain(own.projects.find((one) => one.projectId === project.projectId))).toEqual(plain(project));
  }
});

test.each(DAYS)(
  "savings up to %s are the same from the candidates as from the whole history",
  async (day) => {
    const facts = await savingsFacts(scope, null, day);
    const whole = withHistory(facts, history, day);
    expect(plain(savings(null, null, day, facts))).toEqual(plain(savings(null, null, day, whole)));
  },
);

test("today's exposure brings a small part of the history along", async () => {
  const facts = await exposureFacts(scope, TODAY);
  const whole = withHistory(facts, history, TODAY);
  expect(facts.observations.length).toBeGreaterThan(0);
  expect(facts.observations.length).toBeLessThan(whole.observations.length / 10);
});

test("one project's facts leave the other projects' materials out", async () => {
  const all = await exposureFacts(scope, TODAY);
  for (const { id } of all.projects) {
    const own = await exposureFacts(scope, TODAY, id);
    expect(own.projects.some((project) => project.id === id)).toBe(true);
    expect(own.materials.size).toBeLessThan(all.materials.size);
    expect(own.observations.length).toBeLessThan(all.observations.length);
  }
});
