import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { MaterialRow } from "../../lib/show/material-rows.ts";
import { Age } from "../_ui/age.tsx";
import { Below, NotKnown } from "../_ui/money-text.tsx";
import { Table } from "../_ui/table.tsx";
import { unitWords } from "../_words/unit-words.ts";
import { PriceChange } from "./price-change.tsx";
import { Spark } from "./spark.tsx";

/** Materials with their last price, how it moved, and a small line of where it comes from. */
export async function MaterialsTable({
  rows,
  currency,
}: Readonly<{ rows: readonly MaterialRow[]; currency: string }>) {
  const t = await getTranslations("materials");
  const terms = await getTranslations("terms");
  const units = await unitWords();
  return (
    <Table
      caption={t("title")}
      captionHidden
      cards
      dense
      least="44rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "last", label: t("lastPrice", { currency }), figures: true },
        { key: "seen", label: t("page.seen") },
        { key: "change", label: t("change"), figures: true },
        { key: "trend", label: t("trend"), figures: true },
      ]}
      rows={rows.map(({ id, name, unit, last }) => ({
        key: id,
        cells: [
          <Link key="name" href={`/materials/${id}`}>
            {name}
          </Link>,
          last === null ? (
            <NotKnown key="none">{t("noPrice")}</NotKnown>
          ) : (
            <span key="price">
              {last.price}
              <Below>{t("per", { unit: units.one(unit) })}</Below>
            </span>
          ),
          last === null ? null : (
            <span key="seen">
              {last.terms === "shelf" ? null : `${terms(last.terms)}, `}
              {last.storeName}
              <Below>
                <Age days={last.ageDays} stale={last.stale} />
              </Below>
            </span>
          ),
          last === null ? null : <PriceChange key="change" change={last.change} />,
          last?.spark ? <Spark key="spark" line={last.spark} /> : null,
        ],
      }))}
    />
  );
}
