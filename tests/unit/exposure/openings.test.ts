import { expect, test } from "vitest";
import { ONE } from "../../../lib/decimal.ts";
import { exposure } from "../../../lib/exposure/exposure.ts";
import type { Identity } from "../../../lib/materials/identity.ts";
import { observation, TODAY } from "../../support/price-example.ts";
import { someMaterial } from "../../support/some-material.ts";
import { factsOf, needOf, revisionOf } from "../../support/stock-example.ts";

const door = (id: string, identity: Identity, jambDepth = "4-9/16 in") =>
  someMaterial("each", { width: "36 in", length: "80 in", jambDepth }, { id, category: "doors", identity });
const WANTED = door("wanted", { hand: "left", doorKind: "prehung" });

/** What finishing one left-hand door costs when another one at 90 is accepted in its place, and its own price is 480. */
function cost(other: ReturnType<typeof door>): string | null {
  const per = { quantity: ONE, unit: "each" } as const;
  const need = needOf("a", revisionOf(1, { unit: "each" }), {
    materialId: "wanted",
    alternatives: [{ materialId: other.id, factor: ONE }],
  });
  const facts = factsOf({
    materials: [WANTED, other],
    requirements: [need],
    observations: [
      observation("480", { materialId: "wanted", per }),
      observation("90", { materialId: other.id, per }),
    ],
  });
  const [line] = exposure(TODAY, facts).projects.flatMap((project) => project.lines);
  return line?.costToFinish?.amount.toFixed(2) ?? null;
}

test("a door of the wrong hand or jamb is no offer for a requirement, however cheap and even where it is accepted", () => {
  expect(cost(door("other", { hand: "right", doorKind: "prehung" }))).toBe("480.00");
  expect(cost(door("other", { hand: "left", doorKind: "prehung" }, "6-9/16 in"))).toBe("480.00");
  expect(cost(door("other", { hand: "left", doorKind: "slab" }))).toBe("480.00");
});

test("one that goes into the same opening is", () => {
  expect(cost(door("other", { hand: "left", doorKind: "prehung" }))).toBe("90.00");
});
