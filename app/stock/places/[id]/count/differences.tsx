import { getTranslations } from "next-intl/server";
import type { Material } from "../../../../../lib/materials/material.ts";
import type { PlaceCountText } from "../../../../../lib/show/place-count.ts";
import { newId } from "../../../../_forms/new-id.ts";
import { Button } from "../../../../_ui/button.client.tsx";
import { Form } from "../../../../_ui/form.client.tsx";
import { Part } from "../../../../_ui/page-head.tsx";
import { Table } from "../../../../_ui/table.tsx";
import { unitWords } from "../../../../_words/unit-words.ts";
import { bookCount } from "./actions.ts";

type DifferencesProps = Readonly<{
  placeId: string;
  count: PlaceCountText;
  counted: ReadonlyMap<string, string>;
  materialOf: ReadonlyMap<string, Material>;
  on: string;
  reason: string;
}>;

/** What a stock-take would book, before it does: by lot what the books say, what was counted, what is found or missing. */
export async function Differences(props: DifferencesProps) {
  const { placeId, count, counted, materialOf, on, reason } = props;
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const units = await unitWords();
  const { differences, agree, uncounted } = count;
  const name = (lotId: string) => materialOf.get(lotId)?.name ?? "–";
  return (
    <Part
      title={t("count.differences")}
      id="differences"
      note={t("count.summary", { differ: differences.length, agree, uncounted })}
    >
      {differences.length === 0 ? null : (
        <Table
          caption={t("count.differences")}
          captionHidden
          cards
          least="30rem"
          columns={[
            { key: "material", label: stock("material") },
            { key: "booked", label: t("count.booked"), figures: true },
            { key: "counted", label: t("count.counted"), figures: true },
            { key: "difference", label: t("count.difference"), figures: true },
          ]}
          rows={differences.map((one) => ({
            key: one.lotId,
            cells: [
              name(one.lotId),
              one.booked.text,
              one.counted.text,
              t(`count.${one.kind}`, {
                quantity: one.difference.text,
                unit: units.of(materialOf.get(one.lotId)?.purchaseUnit ?? "piece", one.difference.exact),
              }),
            ],
          }))}
        />
      )}
      <Form action={bookCount} id={newId()} faultsTitle={ui("faultsTitle")}>
        <input type="hidden" name="ofPlace" value={placeId} />
        <input type="hidden" name="on" value={on} />
        <input type="hidden" name="reason" value={reason} />
        {[...counted].map(([lotId, quantity], row) => (
          <span key={lotId} hidden>
            <input type="hidden" name={`counts.${row}.lotId`} value={lotId} />
            <input type="hidden" name={`counts.${row}.name`} value={name(lotId)} />
            <input type="hidden" name={`counts.${row}.quantity`} value={quantity} />
          </span>
        ))}
        <Button pending={ui("saving")}>
          {differences.length === 0 ? t("count.bookNone") : t("count.book")}
        </Button>
      </Form>
    </Part>
  );
}
