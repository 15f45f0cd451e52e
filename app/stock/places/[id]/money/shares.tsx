import { getLocale, getTranslations } from "next-intl/server";
import type { Material } from "../../../../../lib/materials/material.ts";
import { dayText } from "../../../../../lib/show/day-text.ts";
import type { PlaceSharesText } from "../../../../../lib/show/place-shares.ts";
import { newId } from "../../../../_forms/new-id.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { Notice } from "../../../../_ui/notice.tsx";
import { Part } from "../../../../_ui/page-head.tsx";
import { Table } from "../../../../_ui/table.tsx";
import { bookMoney } from "./actions.ts";

type SharesProps = Readonly<{
  placeId: string;
  shares: PlaceSharesText;
  materials: ReadonlyMap<string, Material>;
  asked: Readonly<Record<string, string>>;
}>;

/** Who would bear what of a place's cost, before it is booked; or why nothing can be shared. */
export async function Shares({ placeId, shares, materials, asked }: SharesProps) {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const name = (id: string) => materials.get(id)?.name ?? "–";
  return (
    <Part title={t("money.shares")} id="shares" note={t("money.sharesNote")}>
      {shares.unknown !== null ? (
        <Notice tone="warn">
          <p>{t("money.sizeUnknown", { material: name(shares.unknown) })}</p>
        </Notice>
      ) : shares.shares.length === 0 ? (
        <Notice tone="warn">
          <p>{t("money.nothingThere")}</p>
        </Notice>
      ) : (
        <>
          <Table
            caption={t("money.shares")}
            captionHidden
            cards
            least="24rem"
            columns={[
              { key: "material", label: stock("material") },
              { key: "amount", label: t("money.share"), figures: true },
              { key: "day", label: t("money.lastDay"), figures: true },
            ]}
            rows={shares.shares.map((one) => ({
              key: one.lotId,
              cells: [name(one.materialId), one.amount, dayText(one.lastDay, locale)],
            }))}
          />
          <Form action={bookMoney} id={newId()} faultsTitle={ui("faultsTitle")}>
            <input type="hidden" name="ofPlace" value={placeId} />
            {Object.entries(asked).map(([field, value]) => (
              <input key={field} type="hidden" name={field} value={value} />
            ))}
            <Button pending={ui("saving")}>{t("money.book")}</Button>
          </Form>
        </>
      )}
    </Part>
  );
}
