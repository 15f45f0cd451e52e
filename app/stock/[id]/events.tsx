import { getLocale, getTranslations } from "next-intl/server";
import { changesOf } from "../../../lib/data/changes.ts";
import type { StoredEvent } from "../../../lib/data/stock-events.ts";
import type { PurchaseUnit } from "../../../lib/measure/units.ts";
import { dayText, momentText } from "../../../lib/show/day-text.ts";
import { lotEvents } from "../../../lib/show/lot-events.ts";

import type { Lot } from "../../../lib/stock/lot.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { redoEvent, undoEvent } from "../event-actions.ts";

type EventsProps = Readonly<{
  lot: Lot;
  events: readonly StoredEvent[];
  projectOf: ReadonlyMap<string, string>;
  unit: PurchaseUnit;
}>;

/** What happened to a lot, the newest first: how much, for what, before and after, who recorded it when; each can be undone. */
export async function Events({ lot, events, projectOf, unit }: EventsProps) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const units = await unitWords();
  const { timeZone } = await workspaceSeen();
  const { items } = await changesOf(await scopeSeen(), { of: lot.id, limit: 500 });
  const recorded = new Map(items.map((change) => [change.rowId, change]));
  const rows = lotEvents(lot, events, locale);
  if (rows.length === 0) return null;
  return (
    <Part title={t("events")} note={t("eventsNote")}>
      <Table
        caption={t("events")}
        captionHidden
        cards
        least="46rem"
        columns={[
          { key: "what", label: t("what") },
          { key: "day", label: t("day"), figures: true },
          { key: "quantity", label: t("quantity"), figures: true },
          { key: "free", label: t("freeChange"), figures: true },
          { key: "there", label: t("thereChange"), figures: true },
          { key: "who", label: t("recorded") },
          { key: "undo", label: ui("undo"), quiet: true, figures: true },
        ]}
        rows={rows.map((event) => {
          const change = recorded.get(event.id);
          const project = event.requirementId === null ? null : (projectOf.get(event.requirementId) ?? "–");
          return {
            key: event.id,
            faint: event.undone,
            cells: [
              <>
                {t(`kinds.${event.kind}`)}
                {event.undone ? `, ${t("undone")}` : ""}
                {project ? <Below>{project}</Below> : null}
                {event.amount ? <Below>{event.amount}</Below> : null}
                {event.reason ? <Below>{event.reason}</Below> : null}
              </>,
              dayText(event.on, locale),
              `${event.quantity.text} ${units.of(unit, event.quantity.exact)}`,
              event.free ? `${event.free.before} → ${event.free.after}` : "–",
              event.there ? `${event.there.before} → ${event.there.after}` : "–",
              change ? (
                <>
                  {change.actor}
                  <Below>{momentText(change.at, locale, timeZone)}</Below>
                </>
              ) : (
                "–"
              ),
              <form key="undo" action={event.undone ? redoEvent : undoEvent}>
                <input type="hidden" name="id" value={event.id} />
                <input type="hidden" name="lotId" value={lot.id} />
                <Button
                  kind="quiet"
                  label={`${event.undone ? t("redo") : ui("undo")}: ${t(`kinds.${event.kind}`)}, ${event.quantity.text}, ${dayText(event.on, locale)}`}
                >
                  {event.undone ? t("redo") : ui("undo")}
                </Button>
              </form>,
            ],
          };
        })}
      />
    </Part>
  );
}
