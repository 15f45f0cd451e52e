import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../../../lib/show/day-text.ts";
import { refundTexts } from "../../../../lib/show/refund-text.ts";
import { DayField, Field } from "../../../_ui/field.client.tsx";
import { More } from "../../../_ui/more.tsx";
import { Notice } from "../../../_ui/notice.tsx";
import { amountWords } from "../../../_words/amount-words.ts";
import { unitWords } from "../../../_words/unit-words.ts";
import { EventForm, TakenFrom } from "../event-form.tsx";
import type { LotContext } from "../lot-context.ts";
import { ReturnFields } from "./return-fields.client.tsx";

/** Giving some back to the store, with the refund to expect and why; after the last day it asks for a reason. */
export async function ReturnForm({ lot, material, valuation, more, places, day, names }: LotContext) {
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  const { quantity: free, onOrder } = lot.free;
  const most = free.minus(onOrder);
  const { storeId, paid, agreed } = lot.lot;
  if (storeId === null || !most.greaterThan(0)) return null;
  const found = refundTexts(lot.lot, material, valuation, most, locale);
  const because = Object.fromEntries(
    Object.entries(found.byQuantity).map(([quantity, refund]) => [
      quantity,
      t("return.because", {
        quantity: refund.quantity,
        unit: units.of(lot.unit, quantity),
        net: refund.net,
        tax: refund.tax,
        refund: refund.refund,
        currency: paid.currency,
        kept: found.kept ?? "none",
      }),
    ]),
  );
  const until = agreed.returnableUntil;
  return (
    <More title={t("return.title")}>
      {until === null ? null : (
        <Notice tone={until < day ? "warn" : "plain"}>
          <p>
            {t(until < day ? "return.over" : "return.until", {
              store: names.store(storeId),
              day: dayText(until, locale),
            })}
          </p>
        </Notice>
      )}
      <EventForm lotId={lot.lot.id} kind="returned" button={t("return.button")}>
        <ReturnFields
          start={most.toFixed()}
          unit={units.of(lot.unit, "2")}
          currency={paid.currency}
          refunds={found.byQuantity}
          because={because}
          words={{
            many: t("return.many"),
            refund: t("refund"),
            refundHint: found.unknown ? stock(`unknownCost.${found.unknown}`) : t("return.refundHint"),
          }}
          locale={locale}
          amountWords={await amountWords()}
        />
        <input type="hidden" name="currency" value={paid.currency} />
        <DayField name="on" label={stock("on")} start={day} />
        <Field
          name="reason"
          label={stock("reason")}
          hint={until !== null && until < day ? t("return.reasonAsked") : undefined}
        />
        <TakenFrom lying={more.lying} places={places} />
      </EventForm>
    </More>
  );
}
