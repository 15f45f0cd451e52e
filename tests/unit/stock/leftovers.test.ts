import { expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { drawnLess, leftovers } from "../../../lib/stock/leftovers.ts";
import { stayIn } from "../../../lib/stock/place-charge.ts";
import { day } from "../../support/price-example.ts";
import { eventOf, lotOf } from "../../support/stock-example.ts";

const ten = lotOf(10, 200, { placeId: "shed" });
const a = { requirementId: "a" };

test("left over is what is set aside and not drawn on the day, of the requirements asked for", () => {
  const events = [
    eventOf("allocated", 6, "2026-01-06", a),
    eventOf("allocated", 2, "2026-01-06", { requirementId: "b" }),
    eventOf("drawn", 4, "2026-01-10", a),
  ];
  const over = (on: string) =>
    leftovers(["a"], [ten], events, day(on)).map(
      ({ requirementId, quantity }) => `${requirementId} ${quantity}`,
    );
  expect(over("2026-01-09")).toEqual(["a 6"]);
  expect(over("2026-01-10")).toEqual(["a 2"]);
  expect(leftovers(["c"], [ten], events, day("2026-01-10"))).toEqual([]);
});

test("a draw of 31 of which 5 came back is a draw of 26; of which all came back is none", () => {
  const draw = eventOf("drawn", 31, "2026-01-10", a);
  expect(drawnLess(draw, decimal(5))).toEqual({ ...draw, quantity: decimal(26) });
  expect(drawnLess(draw, decimal(31))).toBeNull();
});

test("a stay is room times days, to the last day something lay there", () => {
  const events = [
    eventOf("moved", 4, "2026-01-11", { placeId: "loft", fromPlaceId: "shed" }),
    eventOf("drawn", 6, "2026-01-16", { placeId: "shed" }),
  ];
  const span = { from: day("2026-01-01"), until: day("2026-01-31") };
  const stay = stayIn("shed", { lot: ten, events }, span, (quantity) => quantity.times(2));
  if (stay === null || stay === "unknown") throw new Error("it lay there");
  // In on the 5th: ten for six days (5th to 10th), six for five days (11th to 15th), twice the room each.
  expect([stay.weight.toFixed(), stay.lastDay]).toEqual(["180", "2026-01-15"]);
  expect(stayIn("attic", { lot: ten, events }, span, (quantity) => quantity)).toBeNull();
  expect(stayIn("shed", { lot: ten, events }, span, () => null)).toBe("unknown");
});
