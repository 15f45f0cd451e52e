import Link from "next/link";
import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../lib/calendar/local-date.ts";
import type { StoredObservation } from "../../lib/data/observations.ts";
import type { OffersOfDay } from "../../lib/prices/offers.ts";
import { seenPrice, standings } from "../../lib/show/seen-price.ts";
import { Age } from "../_ui/age.tsx";
import { Below } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import style from "./materials.module.css";
import { seenWords } from "./seen-words.ts";

export type SeenPricesProps = Readonly<{
  day: LocalDate;
  seen: readonly StoredObservation[];
  offers: OffersOfDay;
  storeName: (id: string) => string;
}>;

/** Prices exactly as they stood on the tag, the newest first, each with whether it counts on the day and why not. */
export async function SeenPrices({ day, seen, offers, storeName }: SeenPricesProps) {
  const t = await getTranslations("materials.page");
  const terms = await getTranslations("terms");
  const reasons = await getTranslations("materials.reasons");
  const locale = await getLocale();
  const words = await seenWords();
  const standing = standings(offers);
  const counts = ({ id, deletedAt }: StoredObservation) => {
    if (deletedAt !== null) return t("deleted");
    const found = standing.get(id);
    if (found === undefined) return "";
    return found === "in-force" ? t("inForce") : reasons(found);
  };
  return (
    <Table
      caption={t("prices")}
      captionHidden
      cards
      least="44rem"
      columns={[
        { key: "day", label: t("day") },
        { key: "store", label: t("store") },
        { key: "terms", label: t("terms") },
        { key: "tag", label: t("asOnTag") },
        { key: "counts", label: t("counts") },
        { key: "change", label: t("actions"), quiet: true },
      ]}
      rows={seen.map((observation) => {
        const row = seenPrice(observation, day, locale);
        return {
          key: row.id,
          faint: observation.deletedAt !== null,
          cells: [
            <span key="day">
              {row.day}
              <Below>
                <Age days={row.ageDays} />
              </Below>
            </span>,
            storeName(row.storeId),
            terms(row.terms),
            <span key="tag" className={observation.deletedAt === null ? undefined : style.struck}>
              {words.price(row)}
              {words.more(row).length > 0 ? <Below>{words.more(row).join(", ")}</Below> : null}
              {row.note === null ? null : <Below>{row.note}</Below>}
            </span>,
            <span key="counts">
              {counts(observation)}
              {observation.corrections > 0 ? (
                <Below>{t("corrected", { count: observation.corrections })}</Below>
              ) : null}
            </span>,
            <Link key="open" href={`/materials/${observation.materialId}/prices/${row.id}`}>
              {t(observation.deletedAt === null ? "correct" : "undelete")}
              <span className={style.hidden}>
                {" "}
                {t("ofDay", { day: row.day, store: storeName(row.storeId) })}
              </span>
            </Link>,
          ],
        };
      })}
    />
  );
}
