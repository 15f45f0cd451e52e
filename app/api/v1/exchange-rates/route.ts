import type { Scope } from "../../../../lib/data/client.ts";
import { addExchangeRate, addExchangeRates, exchangeRates } from "../../../../lib/data/exchange-rates.ts";
import type { ExchangeRateEntry } from "../../../../lib/rates/exchange-rate-entry.ts";
import { apiExchangeRate, exchangeRateKey } from "../../../../lib/show/api-settings.ts";
import { type AddMany, cameOf, manyAnswer } from "../_answers/many-answer.ts";
import { made } from "../_answers/outcome.ts";
import { pageOf } from "../_answers/page.ts";
import { does, resource } from "../_answers/resource.ts";
import * as operations from "../_operations/settings.ts";

function adding(scope: Scope): AddMany<ExchangeRateEntry> {
  return async (entries) => {
    const { rejected } = await addExchangeRates(scope, entries);
    return cameOf(
      entries.map((entry) => exchangeRateKey(apiExchangeRate(entry))),
      rejected,
    );
  };
}

export const { GET, POST, PUT, PATCH, DELETE } = resource(
  does(operations.listExchangeRates, async ({ scope, query }) => {
    const rates = (await exchangeRates(scope)).map(apiExchangeRate);
    return { status: 200, value: pageOf(rates, exchangeRateKey, query) };
  }),
  does(operations.addExchangeRates, async ({ scope, body }) => {
    if (body.many) return { status: 200, value: await manyAnswer(body.entries, adding(scope)) };
    return made(await addExchangeRate(scope, body.one), apiExchangeRate);
  }),
);
