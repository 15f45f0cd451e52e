import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { money } from "../../../lib/money/money.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import type { LotText } from "../../../lib/show/lot-text.ts";
import { moneyText, quantityText } from "../../../lib/show/money-text.ts";
import { percentText } from "../../../lib/show/percent-text.ts";
import { percentOfShare } from "../../../lib/show/share-typed.ts";
import type { Lot } from "../../../lib/stock/lot.ts";
import { Part } from "../../_ui/page-head.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";
import style from "./lot.module.css";

type ReceiptProps = Readonly<{ lot: Lot; text: LotText; names: Names; currency: string }>;

/** What the receipt says, and what that comes to all in. */
export async function Receipt({ lot, text, names, currency }: ReceiptProps) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  const terms = await getTranslations("terms");
  const locale = await getLocale();
  const units = await unitWords();
  const { paid } = lot;
  const { agreed } = lot;
  const received = lot.receipts.map(({ on, quantity }) =>
    lot.receipts.length === 1
      ? dayText(on, locale)
      : `${dayText(on, locale)}: ${quantityText(quantity, locale)}`,
  );
  const day = (on: LocalDate | null) => (on === null ? null : dayText(on, locale));
  const lines: readonly (readonly [string, string | null])[] = [
    [t("origin"), t(`origins.${lot.origin}`)],
    [t("store"), lot.storeId === null ? null : names.store(lot.storeId)],
    [t("terms"), lot.terms === null ? null : terms(lot.terms)],
    [t("quantity"), `${text.acquired.text} ${units.of(text.unit, text.acquired.exact)}`],
    [
      t("paid"),
      `${moneyText(money(paid.amount, paid.currency), locale, { currency: true })}, ${paid.taxIncluded ? t("taxIn") : t("taxOut")}`,
    ],
    ...paid.fees.map((fee): readonly [string, string] => [
      fee.name,
      fee.amount === null
        ? fee.percent === null
          ? ""
          : percentText(fee.percent, locale)
        : moneyText(money(fee.amount, paid.currency), locale, { currency: true }),
    ]),
    ...(paid.taxes ?? []).map((tax): readonly [string, string] => [
      tax.name,
      moneyText(money(tax.amount, paid.currency), locale, { currency: true }),
    ]),
    [t("paidHome", { currency }), lot.paidHome === null ? null : moneyText(lot.paidHome, locale)],
    [t("allInEach", { currency }), text.each],
    [t("orderedOn"), dayText(lot.orderedOn, locale)],
    [t("acquiredOn"), received.length === 0 ? t("notReceived") : received.join("; ")],
    [life("dayNames.expected"), lot.receipts.length === 0 ? day(agreed.expectedOn) : null],
    [life("dayNames.returnable"), day(agreed.returnableUntil)],
    [life("dayNames.adjustable"), day(agreed.adjustableUntil)],
    [
      life("restocking"),
      agreed.restockingPercent === null ? null : percentText(agreed.restockingPercent, locale),
    ],
    [life("givenFree"), lot.givenFree],
    [life("otherCurrency"), lot.otherCurrency],
    [t("condition"), lot.condition.equals(1) ? null : percentOfShare(lot.condition, locale)],
    [t("storedAt"), lot.storedAt],
    [t("note"), lot.note],
  ];
  return (
    <Part title={t("receipt")}>
      <dl className={style.facts}>
        {lines.map(([name, value]) =>
          value === null ? null : (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ),
        )}
      </dl>
      {text.beforeImportCharges ? <p>{t("beforeImportCharges")}</p> : null}
    </Part>
  );
}
