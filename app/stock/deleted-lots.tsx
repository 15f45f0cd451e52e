import { getLocale, getTranslations } from "next-intl/server";
import type { StoredLot } from "../../lib/data/lots.ts";
import { materialsOf } from "../../lib/data/materials.ts";
import { dayText } from "../../lib/show/day-text.ts";
import { quantityText } from "../../lib/show/money-text.ts";
import { Button } from "../_ui/button.client.tsx";
import { Table } from "../_ui/table.tsx";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { undeleteLotForm } from "./actions.ts";

/** Lots that were deleted, each with the way back. */
export async function DeletedLots({ lots }: Readonly<{ lots: readonly StoredLot[] }>) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const scope = await scopeSeen();
  const live = await materialsOf(scope);
  const archived = await materialsOf(scope, { archived: true });
  const names = new Map([...live, ...archived].map(({ id, name }) => [id, name]));
  return (
    <details>
      <summary>{t("deletedCount", { count: lots.length })}</summary>
      <Table
        caption={t("deleted")}
        captionHidden
        least="24rem"
        columns={[
          { key: "material", label: t("material") },
          { key: "quantity", label: t("quantity"), figures: true },
          { key: "acquired", label: t("acquired"), figures: true },
          { key: "back", label: t("bringBack"), quiet: true },
        ]}
        rows={lots.map((lot) => ({
          key: lot.id,
          cells: [
            names.get(lot.materialId) ?? "–",
            quantityText(lot.quantity, locale),
            dayText(lot.orderedOn, locale),
            <form key="back" action={undeleteLotForm}>
              <input type="hidden" name="id" value={lot.id} />
              <Button kind="quiet">{t("bringBack")}</Button>
            </form>,
          ],
        }))}
      />
    </details>
  );
}
