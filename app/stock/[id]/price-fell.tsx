import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { offerFacts } from "../../../lib/data/facts.ts";
import { priceFellText } from "../../../lib/show/price-fell-text.ts";
import { priceFell } from "../../../lib/stock/price-fell.ts";
import { Notice } from "../../_ui/notice.tsx";
import { said } from "../../_ui/said.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { namesOf } from "../../_workspace/names-of.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** "The price fell since you bought": what asking is worth, where, until when, by which offer. Nothing where it did not. */
export async function PriceFellNotice({ lotId, day }: Readonly<{ lotId: string; day: LocalDate }>) {
  const t = await getTranslations("lotLife");
  const terms = await getTranslations("terms");
  const units = await unitWords();
  const locale = await getLocale();
  const facts = await offerFacts(await scopeSeen(), day);
  const own = { ...facts, lots: facts.lots.filter(({ id }) => id === lotId) };
  const [found] = priceFell(day, own);
  if (found === undefined) return null;
  const fell = priceFellText(found, day, locale);
  return (
    <Notice tone="good">
      <p>
        {t.rich("fell.line", {
          store: namesOf(facts).store(fell.storeId),
          offered: fell.offered,
          unit: units.one(fell.unit),
          terms: terms(fell.terms),
          days: fell.seenDays,
          paid: fell.paid,
          quantity: fell.quantity.text,
          units: units.of(fell.unit, fell.quantity.exact),
          money: fell.money,
          currency: facts.valuation.homeCurrency,
          b: said,
        })}
      </p>
      <p>
        {fell.adjust === null ? null : t("fell.adjust", { day: fell.adjust })}{" "}
        {fell.giveBack === null ? null : t("fell.giveBack", { day: fell.giveBack })}
      </p>
      <p>{t("fell.basis", { stale: fell.stale ? "yes" : "no" })}</p>
    </Notice>
  );
}
