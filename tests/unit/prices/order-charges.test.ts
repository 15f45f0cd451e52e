import { describe, expect, test } from "vitest";
import { decimal } from "../../../lib/decimal.ts";
import { money } from "../../../lib/money/money.ts";
import { boughtAlone } from "../../../lib/prices/bought-alone.ts";
import type { Offer, OrderCharge, Take } from "../../../lib/prices/offer.ts";
import { orderCharges } from "../../../lib/prices/order-charges.ts";
import { withTaken } from "../../../lib/prices/with-taken.ts";
import { offerAt } from "../../support/price-example.ts";

function charge(name: string, amount: string, freeFrom: string | null = null): OrderCharge {
  return { name, amount: money(amount, "CAD"), freeFrom: freeFrom === null ? null : money(freeFrom, "CAD") };
}

function take(offer: Offer, quantity: number): Take {
  return { offer, quantity: decimal(quantity), cost: money(offer.price.amount.times(quantity), "CAD") };
}

function charges(...takes: readonly Take[]): string[] {
  return orderCharges(takes, "CAD").map(({ storeId, name, amount }) => `${storeId} ${name} ${amount.amount}`);
}

const delivered = (price: string, ...some: readonly OrderCharge[]) =>
  offerAt(price, {}, { orderCharges: some });

describe("a charge per order", () => {
  test("counts once per store, however many lines carry it", () => {
    const one = delivered("20", charge("delivery", "85"));
    const other = delivered("5", charge("delivery", "85"));
    expect(charges(take(one, 3), take(other, 4))).toEqual(["near delivery 85"]);
  });

  test("counts at each store an order goes to", () => {
    const near = delivered("20", charge("delivery", "85"));
    const far = { ...delivered("20", charge("delivery", "60")), storeId: "far" };
    expect(charges(take(near, 1), take(far, 1))).toEqual(["far delivery 60", "near delivery 85"]);
  });

  test("of another name counts beside it", () => {
    const both = delivered("20", charge("delivery", "85"), charge("small order", "12"));
    expect(charges(take(both, 1))).toEqual(["near delivery 85", "near small order 12"]);
  });

  test("stated twice differently counts as the dearer", () => {
    const one = delivered("20", charge("delivery", "60"));
    const other = delivered("5", charge("delivery", "85"));
    expect(charges(take(one, 1), take(other, 1))).toEqual(["near delivery 85"]);
  });

  test("is waived when the order before tax reaches its free amount", () => {
    const free = delivered("20", charge("delivery", "85", "500"));
    expect([charges(take(free, 24)), charges(take(free, 25))]).toEqual([["near delivery 85"], []]);
  });

  test("is waived by the order as a whole, all its lines together", () => {
    const one = delivered("20", charge("delivery", "85", "500"));
    const other = offerAt("5");
    expect(charges(take(one, 20), take(other, 20))).toEqual([]);
  });

  test("does not count where nothing is taken", () => {
    expect(charges(take(delivered("20", charge("delivery", "85")), 0))).toEqual([]);
  });

  test("is rounded once to the cent", () => {
    expect(charges(take(delivered("20", charge("delivery", "85.005")), 1))).toEqual(["near delivery 85.01"]);
  });
});

describe("bought alone", () => {
  const terms = { step: decimal(1), used: decimal(0), currency: "CAD" } as const;
  const alone = (offers: readonly Offer[], quantity: number) => {
    const { cover, charges: due, total } = boughtAlone(offers, decimal(quantity), terms);
    const stores = [...new Set(cover.takes.map(({ offer }) => offer.storeId))].sort().join("+");
    return `${stores} ${total.amount}${due.length === 0 ? "" : " charged"}`;
  };
  const at = (storeId: string, price: string, ...some: readonly OrderCharge[]): Offer => ({
    ...delivered(price, ...some),
    storeId,
  });

  test("counts delivery: a dearer sheet that comes free may be the cheaper way", () => {
    const offers = [at("yard", "19.20", charge("delivery", "85")), at("supply", "21.48")];
    expect([alone(offers, 28), alone(offers, 40)]).toEqual(["supply 601.44", "yard 853 charged"]);
  });

  test("does not go to a second store for a saving its delivery eats up", () => {
    const limited = { ...at("yard", "15", charge("delivery", "85")), maxQuantity: decimal(6) };
    expect(alone([limited, at("supply", "20")], 10)).toBe("supply 200");
  });

  test("buys up to free delivery where that costs less than the delivery", () => {
    expect(alone([at("yard", "20", charge("delivery", "85", "500"))], 24)).toBe("yard 500");
  });

  test("pays for delivery where there is no other way", () => {
    expect(alone([at("yard", "20", charge("delivery", "85"))], 2)).toBe("yard 125 charged");
  });

  test("never covers less to save a delivery", () => {
    const limited = { ...at("supply", "19"), maxQuantity: decimal(6) };
    expect(alone([at("yard", "20", charge("delivery", "85")), limited], 10)).toBe("supply+yard 279 charged");
  });

  test("never leans on a stale price to save a delivery", () => {
    const stale = { ...at("supply", "1"), stale: true };
    expect(alone([at("yard", "20", charge("delivery", "85")), stale], 10)).toBe("yard 285 charged");
  });

  test("does not cover by stale packs what a fresh price covers, to save a delivery", () => {
    const pack = { ...at("supply", "1"), stale: true, minQuantity: decimal(5), packSize: decimal(5) };
    const fresh = { ...at("yard", "20", charge("delivery", "85")), maxQuantity: decimal(1) };
    expect(alone([pack, fresh], 2)).toBe("supply+yard 110 charged");
  });

  test("leaves out a cheaper sheet where that brings the other order up to free delivery", () => {
    const free = charge("delivery", "85", "500");
    const limited = { ...at("yard", "20", free), maxQuantity: decimal(20) };
    const cheaper = { ...at("supply", "19.99"), maxQuantity: decimal(6) };
    expect(alone([limited, at("yard", "21", free), cheaper], 26)).toBe("yard 526");
  });

  test("of two names of charges at one store both are saved by going elsewhere", () => {
    const yard = at("yard", "20", charge("delivery", "30"), charge("small order", "10"));
    expect(alone([yard, at("supply", "23")], 10)).toBe("supply 230");
  });
});

describe("what others were given of a limited offer", () => {
  const left = (offer: Offer, gone: number) =>
    withTaken([offer], new Map([[offer.observationId, decimal(gone)]])).map(({ maxQuantity }) =>
      maxQuantity?.toString(),
    );

  test("is taken off its maximum", () => {
    expect(left(offerAt("12", { max: 6 }), 4)).toEqual(["2"]);
  });

  test("all of it is an offer no more", () => {
    expect(left(offerAt("12", { max: 6 }), 6)).toEqual([]);
  });

  test("leaving less than the minimum ends it", () => {
    expect(left(offerAt("12", { max: 20, min: 10 }), 11)).toEqual([]);
    expect(left(offerAt("12", { max: 20, min: 10 }), 10)).toEqual(["10"]);
  });

  test("leaves whole packs", () => {
    expect(left(offerAt("12", { max: 24, pack: 6 }), 7)).toEqual(["12"]);
  });

  test("does not touch one without a maximum, or another one", () => {
    expect(left(offerAt("12"), 100)).toEqual([undefined]);
    expect(withTaken([offerAt("12", { max: 6 })], new Map([["another", decimal(6)]])).length).toBe(1);
  });
});
