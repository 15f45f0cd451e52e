import { v7 } from "uuid";
import { expect, test } from "vitest";
import { type LocalDate, localDate } from "../../lib/calendar/local-date.ts";
import { changesOf } from "../../lib/data/changes.ts";
import { valuationOf } from "../../lib/data/facts.ts";
import { addStore } from "../../lib/data/stores.ts";
import { confirmTax, saveTaxRegion, taxRegions } from "../../lib/data/tax-regions.ts";
import { CANADA } from "../../lib/tax/regions-ca.ts";
import { taxRegionEntry } from "../../lib/tax/tax-region-entry.ts";
import { freshDatabase } from "../support/database.ts";
import { accepted, faultsIn, otherScope, ownerScope, someStoreEntry } from "../support/stored-things.ts";

await freshDatabase();
const scope = await ownerScope();

const MAINE = {
  code: "US-ME",
  name: "Maine",
  components: [
    { name: "Sales tax", ratePercent: "5.5", from: "2013-10-01", evidence: "the state's page" },
    { name: "Levy", ratePercent: "0.123456", from: "2015-01-01", until: "2019-12-31", recoverable: true },
  ],
};

async function regionOf(code: string) {
  return (await taxRegions(scope)).find((region) => region.code === code);
}

test("every shipped region is there before anything is entered", async () => {
  expect((await taxRegions(scope)).map(({ code }) => code).sort()).toEqual(
    CANADA.map(({ code }) => code).sort(),
  );
});

test("a region of the workspace's own comes back as entered", async () => {
  const entry = taxRegionEntry.parse(MAINE);
  await accepted(saveTaxRegion(scope, entry));
  const stored = await regionOf("US-ME");
  expect(stored).toEqual({
    ...entry,
    components: [...entry.components].sort((a, b) => (a.name < b.name ? -1 : 1)),
  });
  await accepted(addStore(scope, v7(), someStoreEntry({ taxRegion: "US-ME" })));
});

test("saving a region again replaces its components; what they were stays in the change log", async () => {
  await accepted(saveTaxRegion(scope, taxRegionEntry.parse(MAINE)));
  await accepted(saveTaxRegion(scope, taxRegionEntry.parse({ ...MAINE, components: [] })));
  expect((await regionOf("US-ME"))?.components).toEqual([]);
  const { items } = await changesOf(scope, { limit: 500 });
  const removed = items.filter(({ noun, action }) => noun === "tax_component" && action === "removed");
  expect(removed.map(({ before }) => before?.rate_percent)).toContain("0.123456");
});

test("a region of the workspace's own wins over a shipped one of its code", async () => {
  const own = { code: "CA-YT", name: "Ours", components: [] };
  await accepted(saveTaxRegion(scope, taxRegionEntry.parse(own)));
  expect((await valuationOf(scope)).regions.get("CA-YT")?.name).toBe("Ours");
});

/** The first shipped component that is marked "from memory", or a made-up name where there is none. */
function fromMemory(): { code: string; component: string; from: LocalDate } {
  for (const { code, components } of CANADA)
    for (const component of components)
      if (component.fromMemory && code !== "CA-YT")
        return { code, component: component.name, from: component.from };
  throw new Error("no shipped component is from memory any more: this test has nothing to confirm");
}

test("confirming a component takes its mark away, for this workspace only", async () => {
  const { code, component, from } = fromMemory();
  const marked = async () =>
    (await regionOf(code))?.components.find((one) => one.name === component && one.from === from)?.fromMemory;
  expect(await marked()).toBe(true);
  expect(await confirmTax(scope, code, component, from)).toMatchObject({ ok: true, repeated: false });
  expect(await marked()).toBe(false);
  expect(await confirmTax(scope, code, component, from)).toMatchObject({ ok: true, repeated: true });
  const others = (await taxRegions(await otherScope())).find((region) => region.code === code);
  expect(others?.components.find((one) => one.name === component && one.from === from)?.fromMemory).toBe(
    true,
  );
});

test("confirmed twice at once, it is confirmed once", async () => {
  const other = await otherScope();
  const { code, component, from } = fromMemory();
  const answers = await Promise.all([1, 2, 3].map(() => confirmTax(other, code, component, from)));
  expect(answers.filter((answer) => answer.ok && !answer.repeated)).toHaveLength(1);
});

test("what does not exist cannot be confirmed", async () => {
  const day = localDate("2020-01-01");
  expect(await faultsIn(confirmTax(scope, "ZZ-1", "HST", day))).toEqual(["code: unknown-region"]);
  expect(await faultsIn(confirmTax(scope, "CA-NS", "No such tax", day))).toEqual(["component: not-there"]);
});
