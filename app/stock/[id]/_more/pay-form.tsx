import { getLocale, getTranslations } from "next-intl/server";
import { moneyText, plainMoney } from "../../../../lib/show/money-text.ts";
import { DayField } from "../../../_ui/field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { payForm } from "../../part-actions.ts";
import { QuantityField } from "../../quantity-field.tsx";
import { EventForm } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";

/** A further payment on what was ordered with a down payment. Nothing where all is paid. */
export async function PayForm({ lot, valuation, day }: LotContext) {
  const t = await getTranslations("lotLife");
  const locale = await getLocale();
  const { cost } = lot;
  if (!cost.known || cost.unpaid.amount.isZero()) return null;
  const { currency } = cost.unpaid;
  return (
    <More title={t("pay.title")} open>
      <p>{t("pay.owed", { amount: moneyText(cost.unpaid, locale, { currency: true }) })}</p>
      <EventForm lotId={lot.lot.id} action={payForm} button={t("pay.button")}>
        <QuantityField
          name="amount"
          label={t("pay.amount")}
          start={plainMoney(cost.unpaid).amount}
          beside={currency}
        />
        {currency === valuation.homeCurrency ? null : (
          <QuantityField
            name="home"
            label={t("pay.home")}
            hint={t("pay.homeHint")}
            beside={valuation.homeCurrency}
          />
        )}
        <DayField name="on" label={t("pay.on")} start={day} />
      </EventForm>
    </More>
  );
}
