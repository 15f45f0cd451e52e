import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { SalvageRowText } from "../../../lib/show/salvage-text.ts";
import { Below, NotKnown } from "../../_ui/money-text.tsx";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import type { Names } from "../../_workspace/names-of.ts";

type Props = Readonly<{ rows: readonly SalvageRowText[]; names: Names; currency: string }>;

/** What new material in the place of salvage would be worth, or what would make it known. */
export async function Replacement({ row }: Readonly<{ row: SalvageRowText }>) {
  const t = await getTranslations("salvage");
  if (row.replacement === null || row.going === null) return <NotKnown>{t("replacementUnknown")}</NotKnown>;
  return (
    <>
      {row.replacement}
      <Below>{t("goingEach", row.going)}</Below>
    </>
  );
}

/** Salvage on hand: how much, its condition, what it took to get, what it stands in for. */
export async function SalvageTable({ rows, names, currency }: Props) {
  const t = await getTranslations("salvage");
  const stock = await getTranslations("stock");
  const units = await unitWords();
  return (
    <Table
      caption={t("onHand")}
      captionHidden
      cards
      least="42rem"
      columns={[
        { key: "material", label: t("material") },
        { key: "there", label: t("there"), figures: true },
        { key: "condition", label: t("condition"), figures: true },
        { key: "cost", label: t("cost", { currency }), figures: true },
        { key: "worth", label: t("replacement", { currency }), figures: true },
      ]}
      rows={rows.map((row) => ({
        key: row.lotId,
        cells: [
          <Link key="l" href={`/stock/${row.lotId}`}>
            {names.material(row.materialId)}
          </Link>,
          `${row.onHand.text} ${units.of(row.unit, row.onHand.exact)}`,
          row.condition,
          row.cost ?? <NotKnown key="c">{stock("unknownCost.other")}</NotKnown>,
          <Replacement key="r" row={row} />,
        ],
      }))}
    />
  );
}
