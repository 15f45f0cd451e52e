import { getLocale, getTranslations } from "next-intl/server";
import type { Cover } from "../../../lib/prices/offer.ts";
import { countText } from "../../../lib/show/count-text.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { figureText } from "../../../lib/show/money-text.ts";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import type { Names } from "../../_workspace/names-of.ts";

type OffersProps = Readonly<{
  cover: Cover | null;
  title: string;
  unit: (count: string) => string;
  names: Names;
  currency: string;
}>;

/** The offers the strict figure is measured by. */
export async function StrictOffers({ cover, title, unit, names, currency }: OffersProps) {
  const t = await getTranslations("savingWhy");
  const terms = await getTranslations("terms");
  const locale = await getLocale();
  if (cover === null || !cover.uncovered.isZero())
    return (
      <Part title={title}>
        <p>{t("strictNone")}</p>
      </Part>
    );
  const whole = countText(cover.quantity, locale);
  return (
    <Part title={title} note={t("strictNote", { quantity: whole.text, unit: unit(whole.exact) })}>
      <Table
        caption={title}
        captionHidden
        cards
        least="26rem"
        columns={[
          { key: "store", label: t("store") },
          { key: "seen", label: t("seen") },
          { key: "all-in", label: t("allIn", { currency }), figures: true },
          { key: "take", label: t("take"), figures: true },
        ]}
        rows={cover.takes.map(({ offer, quantity }) => ({
          key: offer.observationId,
          cells: [
            <>
              {names.store(offer.storeId)}
              <Below>{terms(offer.terms)}</Below>
            </>,
            dayText(offer.seenOn, locale),
            figureText(offer.price.amount, locale, 2, 6),
            countText(quantity, locale).text,
          ],
        }))}
      />
    </Part>
  );
}
