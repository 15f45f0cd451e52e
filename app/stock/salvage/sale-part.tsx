import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { askingPrices } from "../../../lib/data/asking-prices.ts";
import type { CurrencyCode } from "../../../lib/money/currencies.ts";
import type { LotOnDay } from "../../../lib/show/lot-text.ts";
import { saleRow } from "../../../lib/show/salvage-text.ts";
import type { StockEvent } from "../../../lib/stock/lot.ts";
import { newId } from "../../_forms/new-id.ts";
import { AmountField } from "../../_ui/amount-field.client.tsx";
import { Button } from "../../_ui/button.client.tsx";
import { DayField } from "../../_ui/field.client.tsx";
import { Form } from "../../_ui/form.client.tsx";
import { More } from "../../_ui/more.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { said } from "../../_ui/said.tsx";
import { amountWords } from "../../_words/amount-words.ts";
import { unitWords } from "../../_words/unit-words.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { askForm, sellForm, withdraw } from "./sale-actions.ts";
import { SoldSoFar } from "./sale-table.tsx";

type SalePartProps = Readonly<{
  lot: LotOnDay;
  events: readonly StockEvent[];
  day: LocalDate;
  currency: CurrencyCode;
}>;

/** On a lot's page: what is asked for one of it, selling some, what was sold beside what was asked. */
export async function SalePart({ lot, events, day, currency }: SalePartProps) {
  const t = await getTranslations("salvage");
  const row = saleRow(lot, await askingPrices(await scopeSeen(), lot.lot.id), events, day, await getLocale());
  const none = lot.free.quantity.isZero();
  if (none && row.asked === null && row.sold === null) return null;
  const amounts = { locale: await getLocale(), words: await amountWords() };
  const fields = (code: string) => (
    <>
      <input type="hidden" name="lotId" value={lot.lot.id} />
      <input type="hidden" name="currency" value={code} />
    </>
  );
  const code = row.asked?.currency ?? currency;
  return (
    <Part title={t("sale")} note={t("saleNote")}>
      {row.asked === null ? null : (
        <>
          <p>
            {t.rich("askingNow", { amount: row.asked.each, currency: code, day: row.asked.since, b: said })}
          </p>
          <form action={withdraw}>
            <input type="hidden" name="id" value={newId()} />
            {fields(code)}
            <input type="hidden" name="since" value={day} />
            <Button kind="quiet">{t("withdraw")}</Button>
          </form>
        </>
      )}
      {row.sold === null ? null : (
        <p>
          {t("soldSoFar")}: <SoldSoFar sold={row.sold} />
        </p>
      )}
      {none || row.asked === null ? null : (
        <More title={t("sell")}>
          <Form action={sellForm} id={newId()} faultsTitle={t("faultsTitle")}>
            {fields(code)}
            <AmountField
              name="quantity"
              label={t("sellMany")}
              start={row.freeExact}
              beside={(await unitWords()).of(lot.unit, "2")}
              {...amounts}
            />
            <AmountField
              name="amount"
              label={t("sellAmount")}
              hint={t("buyerNotKept")}
              start={row.asked.wholeExact}
              beside={code}
              {...amounts}
            />
            <DayField name="on" label={t("sellOn")} start={day} />
            <Button kind="plain" pending={t("saving")}>
              {t("sellButton")}
            </Button>
          </Form>
        </More>
      )}
      {none ? null : (
        <Form action={askForm} id={newId()} faultsTitle={t("faultsTitle")}>
          {fields(currency)}
          <AmountField name="amount" label={t("askEach")} beside={currency} {...amounts} />
          <DayField name="since" label={t("since")} start={day} />
          <Button kind="plain" pending={t("saving")}>
            {row.asked === null ? t("ask") : t("askAnew")}
          </Button>
        </Form>
      )}
    </Part>
  );
}
