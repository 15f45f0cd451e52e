import { getLocale, getTranslations } from "next-intl/server";
import type { LocalDate } from "../../../lib/calendar/local-date.ts";
import { conservationText } from "../../../lib/show/conservation-text.ts";
import type { LotOnDay, LotText } from "../../../lib/show/lot-text.ts";
import { moneyText, quantityText } from "../../../lib/show/money-text.ts";
import type { StockEvent } from "../../../lib/stock/lot.ts";
import { newId } from "../../_forms/new-id.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { Gain } from "../../savings/gain.tsx";
import { setFree } from "../event-actions.ts";

type WhereaboutsProps = Readonly<{
  lot: LotOnDay;
  events: readonly StockEvent[];
  day: LocalDate;
  /** Today is looked at: what is set aside can be set free. */
  now: boolean;
  projectOf: ReadonlyMap<string, string>;
  saving: LotText;
}>;

/** What is set aside for whom, what is free, and that nothing of the lot is unaccounted for. */
export async function Whereabouts({ lot, events, day, now, projectOf, saving }: WhereaboutsProps) {
  const t = await getTranslations("stock");
  const locale = await getLocale();
  const units = await unitWords();
  const rows = lot.account.holdings.map(({ requirementId, quantity, onOrder, cost }) => ({
    key: requirementId ?? "free",
    cells: [
      requirementId === null ? t("freeStock") : (projectOf.get(requirementId) ?? "–"),
      <>
        {quantityText(quantity, locale)} {units.of(lot.unit, quantity.toFixed())}
        {onOrder.isZero() ? null : (
          <Below>{t("onOrderOf", { quantity: quantityText(onOrder, locale) })}</Below>
        )}
      </>,
      lot.cost.known ? moneyText(cost, locale) : t("unknownCost.other"),
      requirementId === null || !now ? null : (
        <form key="free" action={setFree}>
          <input type="hidden" name="id" value={newId()} />
          <input type="hidden" name="lotId" value={lot.lot.id} />
          <input type="hidden" name="requirementId" value={requirementId} />
          <input type="hidden" name="quantity" value={quantity.toFixed()} />
          <input type="hidden" name="on" value={day} />
          <Button kind="quiet">{t("release")}</Button>
        </form>
      ),
    ],
  }));
  const { acquired, found, parts } = conservationText(lot.lot, events, day, locale);
  const whole = [t("parts.acquired", { quantity: acquired }), found && t("parts.found", { quantity: found })];
  const where = parts.map(({ part, quantity }) => t(`parts.${part}`, { quantity }));
  return (
    <Part title={t("conservation")} note={`${whole.filter(Boolean).join(" + ")} = ${where.join(" + ")}`}>
      {rows.length > 0 ? (
        <Table
          caption={t("conservation")}
          captionHidden
          cards
          least="30rem"
          columns={[
            { key: "for", label: t("forWhat") },
            { key: "quantity", label: t("quantity"), figures: true },
            { key: "cost", label: t("costShort"), figures: true },
            { key: "release", label: t("release"), quiet: true, figures: true },
          ]}
          rows={rows}
        />
      ) : null}
      {lot.setAside.quantity.isZero() ? null : (
        <p>
          {t("unrealised")}: <Gain gain={saving.saving} inline />
        </p>
      )}
    </Part>
  );
}
