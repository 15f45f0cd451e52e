import { getLocale, getTranslations } from "next-intl/server";
import type { GoingWhy } from "../../../lib/savings/why-saving.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { figureText, moneyText } from "../../../lib/show/money-text.ts";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import type { Names } from "../../_workspace/names-of.ts";

type GoingProps = Readonly<{ title: string; why: GoingWhy; names: Names; unit: string; currency: string }>;

/** A going price with the sightings it rests on: which store, seen when, what that comes to all in on the day. */
export async function Going({ title, why, names, unit, currency }: GoingProps) {
  const t = await getTranslations("savingWhy");
  const locale = await getLocale();
  const { going, sources } = why;
  if (!going.known)
    return (
      <Part title={title}>
        <p>{t("goingNone")}</p>
      </Part>
    );
  const price = figureText(going.price.amount, locale, 2, 6);
  return (
    <Part title={title} note={t("going", { price, currency, unit, kind: going.kind, stores: going.stores })}>
      <Table
        caption={title}
        captionHidden
        cards
        least="26rem"
        columns={[
          { key: "store", label: t("store") },
          { key: "seen", label: t("seen") },
          { key: "all-in", label: t("allIn", { currency }), figures: true },
          { key: "gives", label: t("gives"), figures: true },
        ]}
        rows={sources.map(({ before, after, value }) => {
          const ends = [before, ...(after === null ? [] : [after])];
          return {
            key: before.observation.id,
            cells: [
              names.store(before.observation.storeId),
              ends.map(({ observation }, index) => (
                <span key={observation.id}>
                  {index === 0
                    ? dayText(observation.seenOn, locale)
                    : t("then", { day: dayText(observation.seenOn, locale) })}
                  {observation.amount === null ? null : (
                    <Below>
                      {t("asTagged", {
                        amount: moneyText(observation.amount, locale),
                        currency: observation.amount.currency,
                      })}
                    </Below>
                  )}
                </span>
              )),
              ends.map(({ price: each }) => figureText(each, locale, 2, 4)).join(", "),
              figureText(value, locale, 2, 6),
            ],
          };
        })}
      />
    </Part>
  );
}
