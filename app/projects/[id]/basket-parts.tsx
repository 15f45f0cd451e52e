import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { BasketFacts } from "../../../lib/exposure/basket.ts";
import type { BasketNow } from "../../../lib/show/basket-text.ts";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";

type BasketPartsProps = Readonly<{ now: BasketNow; facts: BasketFacts; names: Names; currency: string }>;

/** What each material brings to the index, in points that add up to its change; its own change beside it, in percent. */
export async function BasketParts({ now, facts, names, currency }: BasketPartsProps) {
  const t = await getTranslations("basket");
  const units = await unitWords();
  const unitOf = (id: string, quantity: string) => {
    const unit = facts.materials.get(id)?.purchaseUnit;
    return unit === undefined ? "" : units.of(unit, quantity);
  };
  return (
    <Table
      caption={t("parts")}
      cards
      least="44rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "required", label: t("required"), figures: true },
        { key: "before", label: t("before", { currency }), figures: true },
        { key: "now", label: t("now", { currency }), figures: true },
        { key: "percent", label: t("ownChange"), figures: true },
        { key: "points", label: t("contribution"), figures: true },
      ]}
      rows={now.rows.map((row) => ({
        key: row.materialId,
        cells: [
          <Link key="m" href={`/materials/${row.materialId}`}>
            {names.material(row.materialId)}
          </Link>,
          `${row.quantity} ${unitOf(row.materialId, row.quantityExact)}`,
          row.before,
          row.now,
          row.percent,
          row.points,
        ],
      }))}
      foot={[t("basket"), "", now.before, now.now, now.percent, now.points]}
    />
  );
}
