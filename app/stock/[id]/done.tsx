import { getLocale, getTranslations } from "next-intl/server";
import { isLocalDate } from "../../../lib/calendar/local-date.ts";
import type { StoredEvent } from "../../../lib/data/stock-events.ts";
import type { PurchaseUnit } from "../../../lib/measure/units.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { quantityText } from "../../../lib/show/money-text.ts";
import { STOCK_EVENT_KINDS } from "../../../lib/stock/lot.ts";
import { Notice } from "../../_ui/notice.tsx";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { redoEvent, undoEvent } from "../event-actions.ts";

type DoneProps = Readonly<{ query: Query; events: readonly StoredEvent[]; unit: PurchaseUnit; name: string }>;

/** What was just done to the lot, and the way back; or why something could not be taken back. */
export async function Done({ query, events, unit, name }: DoneProps) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const done = await asked(query, "done");
  if (done === "cannot") return <Cannot query={query} />;
  if (done === "recorded" || done === "restored")
    return <UndoBar>{t(done === "recorded" ? "doneLot" : "doneRestored", { material: name })}</UndoBar>;
  const id = await asked(query, "event");
  const event = events.find((known) => known.id === id);
  if (event === undefined || (done !== "event" && done !== "undone")) return null;
  const fields = { id: event.id, lotId: event.lotId };
  if (event.undoneAt !== null)
    return <UndoBar undo={{ action: redoEvent, fields, label: t("redo") }}>{t("doneUndone")}</UndoBar>;
  return (
    <UndoBar undo={{ action: undoEvent, fields, label: ui("undo") }}>
      {t("doneEvent", {
        kind: event.kind,
        quantity: quantityText(event.quantity, locale),
        unit: (await unitWords()).of(unit, event.quantity.toFixed()),
      })}
    </UndoBar>
  );
}

/** Names the later event that needs the one that was to be taken back. */
async function Cannot({ query }: Readonly<{ query: Query }>) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const named = await asked(query, "kind");
  const known = STOCK_EVENT_KINDS.find((one) => one === named);
  const on = await asked(query, "on");
  if (known === undefined || !isLocalDate(on)) return <Notice tone="warn">{ui("couldNotUndo")}</Notice>;
  return (
    <Notice tone="warn" live>
      <p>
        {t("cannotUndo", {
          event: t(`kinds.${known}`),
          quantity: (await asked(query, "quantity")) ?? "",
          day: dayText(on, await getLocale()),
        })}
      </p>
    </Notice>
  );
}
