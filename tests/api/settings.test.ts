import { describe, expect, test } from "vitest";
import * as z from "zod";
import { observationShape } from "../../lib/show/api-observation.ts";
import { pricesShape, seriesShape } from "../../lib/show/api-prices.ts";
import { taxRegionShape, workspaceShape } from "../../lib/show/api-settings.ts";
import { storeShape } from "../../lib/show/api-store.ts";
import { ownInterface } from "../support/interface.ts";
import { another, priceSeen, somePlywood, someStore } from "../support/interface-things.ts";

const api = ownInterface();

describe("the workspace", () => {
  test("starts in Canadian dollars, registered for nothing, without a money rate", async () => {
    expect(await api.read(workspaceShape, "/workspace")).toMatchObject({
      homeCurrency: "CAD",
      taxRegion: "CA-NS",
      registeredFor: [],
      moneyRate: null,
      moneyRates: [],
      recheckDays: 30,
      timeZone: "America/Halifax",
    });
  });

  test("changes what is sent and keeps the rest", async () => {
    const change = (body: object) => api.change(workspaceShape, "PATCH", "/workspace", body);
    const changed = await change({ name: "Two-person outfit", recheckDays: 21, registeredFor: ["HST"] });
    expect(changed).toMatchObject({
      name: "Two-person outfit",
      recheckDays: 21,
      homeCurrency: "CAD",
      registeredFor: [{ tax: "HST", from: null, until: null }],
    });
    expect(await api.read(workspaceShape, "/workspace")).toEqual(changed);
    await change({ name: "My workspace", recheckDays: 30, registeredFor: [] });
  });

  test("refuses what no workspace can be, and changes nothing then", async () => {
    const before = await api.read(workspaceShape, "/workspace");
    const { faults } = await api.refused(422, "PATCH", "/workspace", {
      name: "Renamed",
      homeCurrency: "cad",
      timeZone: "Mars/Olympus",
      recheckDays: 0,
      moneyRate: 7,
    });
    expect(faults.toSorted()).toEqual([
      "homeCurrency: unknown-currency",
      "moneyRate: not-an-object",
      "recheckDays: not-positive",
      "timeZone: unknown-time-zone",
    ]);
    expect((await api.refused(422, "PATCH", "/workspace", { taxRegion: "CA-XX" })).faults).toEqual([
      "taxRegion: unknown-region",
    ]);
    expect(await api.read(workspaceShape, "/workspace")).toEqual(before);
  });
});

describe("tax regions", () => {
  const maine = {
    code: "US-ME",
    name: "Maine",
    components: [{ name: "Sales tax", ratePercent: "5.5", from: "2013-10-01", recoverable: false }],
  };

  test("the shipped ones are there with their dated rates and where these come from", async () => {
    const { items } = await api.read(z.object({ items: z.array(taxRegionShape) }), "/tax-regions?limit=100");
    const hst = items.find(({ code }) => code === "CA-NS")?.components.filter(({ name }) => name === "HST");
    // Nova Scotia: HST 15 % until 2025-03-31, 14 % from 2025-04-01 (Canada Revenue Agency, GST/HST rates; read).
    expect(hst?.map(({ ratePercent, until }) => [ratePercent, until])).toContainEqual(["15", "2025-03-31"]);
    expect(hst?.map(({ ratePercent, from }) => [ratePercent, from])).toContainEqual(["14", "2025-04-01"]);
    expect(hst?.every(({ evidence }) => evidence.length > 0)).toBe(true);
  });

  test("one of one's own is made once: the same again is 200, another content 409", async () => {
    const made = await api.make(taxRegionShape, "/tax-regions", maine);
    expect(made).toMatchObject({ code: "US-ME", country: "US", completeFrom: "2013-10-01" });
    expect(await api.change(taxRegionShape, "POST", "/tax-regions", maine)).toEqual(made);
    const other = { ...maine, components: [{ ...maine.components[0], ratePercent: "6" }] };
    await api.refused(409, "POST", "/tax-regions", other);
    expect(await api.change(taxRegionShape, "POST", "/tax-regions", maine)).toEqual(made);
  });

  test("a store needs a region that is known", async () => {
    const body = { name: another("Yard"), taxRegion: "US-ZZ", currency: "USD" };
    expect((await api.refused(422, "POST", "/stores", body)).faults).toEqual(["taxRegion: unknown-region"]);
  });
});

describe("a store across the border", () => {
  /** 30.00 USD before 5.5 % sales tax at 1.37, beside a shelf price of 40.00 CAD before 14 % HST at home. */
  async function twoStores() {
    const code = `US-M${another("").trim()}`;
    const components = [{ name: "Sales tax", ratePercent: "5.5", from: "2013-10-01" }];
    await api.make(taxRegionShape, "/tax-regions", { code, country: "US", components });
    const rate = { date: "2025-06-02", base: "USD", quote: "CAD", rate: "1.37", source: "central bank" };
    await api.ask("POST", "/exchange-rates", rate);
    const home = await someStore(api);
    const across = await someStore(api, {
      name: another("Lantern Line Lumber"),
      taxRegion: code,
      currency: "USD",
    });
    const plywood = await somePlywood(api);
    const add = (body: object) => api.make(observationShape, "/observations", body);
    const athome = await add(priceSeen(plywood.id, home.id, "2025-06-03", "40.00"));
    const abroad = await add(priceSeen(plywood.id, across.id, "2025-06-03", "30.00", { currency: "USD" }));
    return { plywood, across, athome, abroad };
  }

  test("is marked and never best until its import charges are confirmed, none being an answer", async () => {
    const { plywood, across, athome, abroad } = await twoStores();
    const path = `/materials/${plywood.id}/prices?asOf=2025-06-04&quantity=10`;
    const before = await api.read(pricesShape, path);
    // 30.00 x 1.055 = 31.65 USD, x 1.37 = 43.3605 CAD; at home 40.00 x 1.14 = 45.60.
    expect(
      before.offers.map((one) => [one.observationId, one.allIn.amount, one.beforeImportCharges]),
    ).toEqual([
      [abroad.id, "43.3605", true],
      [athome.id, "45.60", false],
    ]);
    expect(before.bestOffer?.total).toBe("456.00");
    await api.change(storeShape, "PATCH", `/stores/${across.id}`, { importCharges: [] });
    const after = await api.read(pricesShape, path);
    expect(after.bestOffer?.total).toBe("433.61"); // 10 x 43.3605, rounded once
    const charged = { importCharges: [{ name: "Duty", percent: "10", perOrder: "15.00" }] };
    await api.change(storeShape, "PATCH", `/stores/${across.id}`, charged);
    const dear = await api.read(pricesShape, path);
    expect(dear.bestOffer?.total).toBe("456.00");
  });

  test("its series can be read at home, as seen, in another currency, and by a measure", async () => {
    const { plywood, athome, abroad } = await twoStores();
    const amounts = async (query: string) => {
      const { points } = await api.read(seriesShape, `/materials/${plywood.id}/series?${query}`);
      const of = (id: string) => points.find(({ observationId }) => observationId === id)?.allIn;
      return [of(athome.id), of(abroad.id)].map((price) => `${price?.amount} ${price?.currency}`);
    };
    expect(await amounts("")).toEqual(["45.60 CAD", "43.3605 CAD"]);
    expect(await amounts("currency=as-seen")).toEqual(["45.60 CAD", "31.65 USD"]);
    expect(await amounts("currency=USD")).toEqual(["33.284672 USD", "31.65 USD"]); // 45.60 / 1.37 = 33.2846715...
    expect(await amounts("unit=sq%20ft")).toEqual(["1.425 CAD", "1.355016 CAD"]); // by 32; 1.355015625
    const none = await api.read(seriesShape, `/materials/${plywood.id}/series?from=2025-06-04`);
    expect(none.points).toEqual([]);
    const wrong = `/materials/${plywood.id}/series?unit=cubit&currency=XYZ&from=2025-06-04&to=2025-06-03`;
    expect((await api.refused(422, "GET", wrong)).faults.toSorted()).toEqual([
      "currency: unknown-currency",
      "to: days-reversed",
      "unit: unknown-unit",
    ]);
    const pounds = await api.read(seriesShape, `/materials/${plywood.id}/series?unit=pound`);
    expect(pounds.points.map(({ notKnown }) => notKnown)).toEqual([
      "unit-not-convertible",
      "unit-not-convertible",
    ]);
  });
});
