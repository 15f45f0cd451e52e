import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import { offerFacts } from "../../lib/data/facts.ts";
import { priceFellText } from "../../lib/show/price-fell-text.ts";
import { priceFell } from "../../lib/stock/price-fell.ts";
import { Below } from "../_ui/money-text.tsx";
import { Part } from "../_ui/page-head.tsx";
import { Table } from "../_ui/table.tsx";
import { unitWords } from "../_words/unit-words.ts";
import { namesOf } from "../_workspace/names-of.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

/** Lots whose store asks less now than they cost, while it still pays the difference or takes them back. Nothing when there are none. */
export async function PriceFellTable({ day }: Readonly<{ day: LocalDate }>) {
  const facts = await offerFacts(await scopeSeen(), day);
  const found = priceFell(day, facts);
  if (found.length === 0) return null;
  const t = await getTranslations("lotLife");
  const words = await getTranslations("today");
  const terms = await getTranslations("terms");
  const units = await unitWords();
  const locale = await getLocale();
  const names = namesOf(facts);
  const currency = facts.valuation.homeCurrency;
  return (
    <Part title={t("fell.title")} note={t("fell.note", { currency })}>
      <Table
        caption={t("fell.title")}
        captionHidden
        cards
        least="40rem"
        columns={[
          { key: "material", label: words("material") },
          { key: "store", label: words("store") },
          { key: "paid", label: t("fell.paid"), figures: true },
          { key: "now", label: t("fell.now"), figures: true },
          { key: "money", label: t("fell.money"), figures: true },
          { key: "ask", label: t("fell.ask"), figures: true },
        ]}
        rows={found.map((one) => {
          const fell = priceFellText(one, day, locale);
          return {
            key: fell.lotId,
            cells: [
              <Link key="m" href={`/stock/${fell.lotId}`}>
                {names.material(fell.materialId)}
              </Link>,
              names.store(fell.storeId),
              fell.paid,
              <>
                {fell.offered}
                <Below>{t("fell.seen", { terms: terms(fell.terms), days: fell.seenDays })}</Below>
              </>,
              <>
                {fell.money}
                <Below>
                  {t("fell.for", {
                    quantity: fell.quantity.text,
                    unit: units.of(fell.unit, fell.quantity.exact),
                  })}
                </Below>
              </>,
              <>
                {fell.adjust === null ? null : <span>{t("fell.adjustBy", { day: fell.adjust })}</span>}
                {fell.giveBack === null ? null : (
                  <Below>{t("fell.giveBackBy", { day: fell.giveBack })}</Below>
                )}
              </>,
            ],
          };
        })}
      />
    </Part>
  );
}
