import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { PurchaseUnit } from "../../../lib/measure/units.ts";
import { money } from "../../../lib/money/money.ts";
import { rateKept } from "../../../lib/prices/rate-kept.ts";
import type { Valuation } from "../../../lib/prices/valuation.ts";
import type { WhySaving } from "../../../lib/savings/why-saving.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { figureText, moneyText } from "../../../lib/show/money-text.ts";
import { percentText } from "../../../lib/show/percent-text.ts";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import type { UnitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";

type ReceiptProps = Readonly<{
  why: WhySaving;
  valuation: Valuation;
  unit: PurchaseUnit;
  units: UnitWords;
  names: Names;
}>;

/** The lot a row came out of: what its receipt says, which tax and rate were used, what it cost, and its payments carried. */
export async function LotBehind({ why, valuation, unit, units, names }: ReceiptProps) {
  const t = await getTranslations("savingWhy");
  const s = await getTranslations("savings");
  const locale = await getLocale();
  const { lot, cost, carried, row } = why;
  const { homeCurrency } = valuation;
  const store = lot.storeId === null ? undefined : valuation.stores.get(lot.storeId);
  const code = lot.paid.taxRegion ?? store?.taxRegion ?? null;
  const region = code === null ? null : (valuation.regions.get(code)?.name ?? code);
  const quantity = countText(lot.quantity, locale);
  const days = cost.known ? cost.payments.map(({ on }) => on) : [lot.orderedOn];
  const foreign = lot.paid.currency !== homeCurrency;
  const rates = days.map((day) => {
    if (lot.paidHome !== null) return t("rateCard");
    const rate = rateKept(valuation, lot.paid.currency, homeCurrency, day);
    if (!rate.known) return dayText(day, locale);
    return t("rateText", {
      from: lot.paid.currency,
      rate: figureText(rate.rate, locale, 2, 6),
      to: homeCurrency,
      day: dayText(rate.on, locale),
      source: rate.source,
    });
  });
  const lines: readonly (readonly [string, string])[] = [
    [
      t("acquired"),
      t("acquiredText", {
        day: dayText(lot.orderedOn, locale),
        source: s(`sources.${row.source}`),
        store: lot.storeId === null ? "none" : names.store(lot.storeId),
      }),
    ],
    [
      t("receipt"),
      t("receiptText", {
        amount: moneyText(money(lot.paid.amount, lot.paid.currency), locale),
        currency: lot.paid.currency,
        quantity: quantity.text,
        unit: units.of(unit, quantity.exact),
        tax: lot.paid.taxIncluded ? "yes" : "no",
      }),
    ],
    [t("tax"), region === null ? t("noRegion") : t("taxText", { region })],
    ...(foreign ? [...new Set(rates)].map((text) => [t("rate"), text] as const) : []),
    ...(cost.known
      ? [[t("lotCost", { currency: homeCurrency }), figureText(cost.cost.amount, locale, 2, 6)] as const]
      : []),
  ];
  return (
    <>
      <Part title={t("lot")}>
        <Table
          caption={t("lot")}
          captionHidden
          least="16rem"
          columns={[
            { key: "name", label: t("step") },
            { key: "value", label: t("receipt") },
          ]}
          rows={lines.map(([name, value]) => ({ key: `${name} ${value}`, cells: [name, value] }))}
        />
        <p>
          <Link href={`/stock/${lot.id}`}>{t("toLot")}</Link>
        </p>
      </Part>
      <Part title={t("carryingTitle")}>
        {carried === null || carried.length === 0 ? (
          <p>{carried === null ? t("carryingNone") : t("carryingNothing")}</p>
        ) : (
          <Table
            caption={t("carryingTitle")}
            captionHidden
            cards
            least="26rem"
            columns={[
              { key: "payment", label: t("payment") },
              { key: "amount", label: t("paidOn"), figures: true },
              { key: "days", label: t("days"), figures: true },
              { key: "rate", label: t("rate"), figures: true },
              { key: "carrying", label: t("carrying"), figures: true },
            ]}
            rows={carried.map((one) => ({
              key: `${one.paidOn} ${one.from} ${one.amount.amount.toFixed()}`,
              cells: [
                t("carryingDays", { from: dayText(one.from, locale), until: dayText(one.until, locale) }),
                moneyText(one.amount, locale),
                String(one.days),
                percentText(one.percent, locale),
                figureText(one.carrying.amount, locale, 2, 6),
              ],
            }))}
          />
        )}
      </Part>
    </>
  );
}
