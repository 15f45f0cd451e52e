import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { eachOnce, standInsOfLines, standInTexts } from "../../../lib/show/stand-ins.ts";
import { toBuy } from "../../../lib/show/to-buy.ts";
import { cad, DAY, line, offer, take, totals } from "../../support/exposure-example.ts";
import { day, SHEET, TODAY } from "../../support/price-example.ts";
import { eventOf, factsOf, lotOf, needOf, revisionOf } from "../../support/stock-example.ts";

const alternatives = [
  { materialId: "thicker", factor: decimal("1") },
  { materialId: "half-sheet", factor: decimal("2.25") },
];
const need = needOf("a", revisionOf(10), { alternatives });
const strict = needOf("b", revisionOf(5));

test("an accepted alternative is named with what it stands in for and its factor; the material itself is no stand-in", () => {
  expect(standInTexts([need], ["sheet", "half-sheet", "thicker", "thicker"], "en-CA")).toEqual([
    { requirementId: "a", requiredId: "sheet", materialId: "half-sheet", factor: "2.25" },
    { requirementId: "a", requiredId: "sheet", materialId: "thicker", factor: "1.0" },
  ]);
});

test("what nobody accepted stands in for nothing", () => {
  expect(standInTexts([strict], ["thicker"], "en-CA")).toEqual([]);
  expect(standInTexts([need], ["door"], "en-CA")).toEqual([]);
});

test("two needs served alike are said once, two factors are both said", () => {
  const alike = needOf("c", revisionOf(3), { alternatives });
  const other = needOf("d", revisionOf(3), {
    alternatives: [{ materialId: "thicker", factor: decimal("1.5") }],
  });
  const said = eachOnce(standInTexts([need, alike, other], ["thicker"], "en-CA"));
  expect(said.map(({ factor }) => factor)).toEqual(["1.0", "1.5"]);
});

test("a need says what stands in among the offers taken now and among the lots locked in for it", () => {
  const thicker = { ...SHEET, id: "thicker" };
  const facts = factsOf({
    materials: [SHEET, thicker],
    requirements: [need, strict],
    lots: [lotOf(4, 80, { id: "thick", materialId: "thicker" }), lotOf(10, 200)],
    events: [
      eventOf("allocated", 3, "2026-01-06", { requirementId: "a", lotId: "thick" }),
      eventOf("allocated", 2, "2026-01-06", { requirementId: "a" }),
      eventOf("allocated", 2, "2026-01-06", { requirementId: "b" }),
    ],
  });
  const lines = [
    line({ requirementId: "a", takes: [take("2"), take("1", offer({ materialId: "half-sheet" }))] }),
    line({ requirementId: "b" }),
  ];
  const standIns = standInsOfLines(lines, facts, TODAY, "en-CA");
  expect([...standIns.keys()]).toEqual(["a"]);
  expect(standIns.get("a")?.now.map(({ materialId }) => materialId)).toEqual(["half-sheet"]);
  expect(standIns.get("a")?.lockedIn.map(({ materialId }) => materialId)).toEqual(["thicker"]);
  expect(standInsOfLines(lines, facts, day("2026-01-05"), "en-CA").get("a")?.lockedIn).toEqual([]);
});

test("what to buy of an alternative says what it stands in for", () => {
  const pool = {
    materialId: "sheet",
    unit: "sheet",
    requirementIds: ["a"],
    quantity: decimal(10),
    takes: [take("4"), take("6", offer({ materialId: "thicker" }))],
    cost: cad("341.50"),
    over: decimal(0),
    uncovered: decimal(0),
  } as const;
  const job = { projectId: "job", lines: [], pools: [pool], orderCharges: [], totals: totals() };
  const rows = toBuy(job, [need, strict], DAY, "en-CA");
  expect(rows.map(({ standIns }) => standIns.map(({ factor }) => factor))).toEqual([[], ["1.0"]]);
});
