import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../../lib/show/day-text.ts";
import type { LotDays } from "../../../lib/show/lot-days.ts";
import { Weighs } from "../lots-table.tsx";
import style from "./lot.module.css";
import type { LotContext } from "./lot-context.ts";

const DAYS = ["expected", "keeps", "returnable", "adjustable"] as const satisfies readonly (keyof LotDays)[];

/** Where a lot lies, what that weighs, its condition, and the days that belong to it: what is not said is left out. */
export async function LotFacts({ lot, more, places }: LotContext) {
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const locale = await getLocale();
  return (
    <dl className={style.facts}>
      <div>
        <dt>{t("liesAt")}</dt>
        <dd>
          {more.lying.length === 0
            ? (lot.lot.storedAt ?? stock("nowhere"))
            : more.lying.map(({ placeId, quantity }, at) => (
                <span key={placeId ?? "none"}>
                  {at > 0 ? "; " : ""}
                  {placeId === null ? (
                    t("notPutAway")
                  ) : (
                    <Link href={`/stock/places/${placeId}`}>{places.name(placeId)}</Link>
                  )}
                  {more.lying.length > 1 ? `: ${quantity}` : ""}
                </span>
              ))}
        </dd>
      </div>
      {more.weight.none && more.weight.unknown.length === 0 ? null : (
        <div>
          <dt>{t("weighs")}</dt>
          <dd>
            <Weighs weight={more.weight} />
          </dd>
        </div>
      )}
      {more.condition === null ? null : (
        <div>
          <dt>{t("condition")}</dt>
          <dd>{more.condition}</dd>
        </div>
      )}
      {DAYS.map((which) => {
        const one = more.days[which];
        if (one === null) return null;
        const over = one.left < 0 ? "yes" : "no";
        return (
          <div key={which}>
            <dt>{t(`dayNames.${which}`)}</dt>
            <dd>{t("dayLeft", { day: dayText(one.on, locale), left: one.left, over, which })}</dd>
          </div>
        );
      })}
    </dl>
  );
}
