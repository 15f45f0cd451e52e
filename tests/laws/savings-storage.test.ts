import * as fc from "fast-check";
import { expect, test } from "vitest";
import { plusDays } from "../../lib/calendar/local-date.ts";
import { type Decimal, ZERO } from "../../lib/decimal.ts";
import { savings } from "../../lib/savings/savings.ts";
import { lotAccount } from "../../lib/stock/lot-account.ts";
import { lotCost } from "../../lib/stock/lot-cost.ts";
import { isStorageMoney, storageShares } from "../../lib/stock/storage-shares.ts";
import { law } from "../support/law.ts";
import { SHEET, TODAY } from "../support/price-example.ts";
import { someWorkspace } from "../support/random-workspace.ts";

const total = (values: readonly (Decimal | undefined)[]) =>
  values.reduce<Decimal>((all, value) => all.plus(value ?? ZERO), ZERO);
const someDay = fc.integer({ min: 0, max: 50 }).map((ago) => plusDays(TODAY, -ago));

test("money entered for storing is in the rows, or with what is free or was drawn for nobody: no cent twice, none lost", () => {
  law(
    fc.property(someWorkspace, someDay, (given, day) => {
      // Without a money rate the carrying of a row is what storing it cost, and nothing else.
      const facts = { ...given, moneyRates: [] };
      const { rows } = savings(null, null, day, facts);
      for (const lot of facts.lots.filter(({ orderedOn }) => orderedOn <= day)) {
        const events = facts.events.filter((event) => event.lotId === lot.id && event.on <= day);
        const cost = lotCost(lot, SHEET, facts.valuation, day);
        if (!cost.known) throw new Error("the lots of this law are all of a known cost");
        const account = lotAccount(lot, cost.cost, events, day);
        const shares = storageShares(lot, events, account, day, "CAD", (amount) => amount);
        const forNobody = events.filter(
          ({ kind, requirementId }) => kind === "drawn" && requirementId === null,
        );
        const elsewhere = [
          shares?.held.get(null)?.amount,
          ...forNobody.map(({ id }) => shares?.left.get(id)?.amount),
        ];
        const inRows = rows.filter((row) => row.lotId === lot.id).map((row) => row.carrying?.amount);
        const entered = events.filter(isStorageMoney).map(({ amount }) => amount?.amount);
        expect(total([...inRows, ...elsewhere]).toFixed()).toBe(total(entered).toFixed());
      }
    }),
    { numRuns: 400 },
  );
});
