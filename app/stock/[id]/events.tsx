import { getLocale, getTranslations } from "next-intl/server";
import { changesOf } from "../../../lib/data/changes.ts";
import type { PurchaseUnit } from "../../../lib/measure/units.ts";
import { dayText, momentText } from "../../../lib/show/day-text.ts";
import type { LifeStep } from "../../../lib/show/lot-life.ts";
import { Below } from "../../_ui/money-text.tsx";
import { Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { scopeSeen, workspaceSeen } from "../../_workspace/workspace-seen.ts";
import { StepUndo } from "./step-undo.tsx";
import { StepWhat } from "./step-what.tsx";

type EventsProps = Readonly<{
  lotId: string;
  steps: readonly LifeStep[];
  projectOf: ReadonlyMap<string, string>;
  placeName: (id: string) => string;
  unit: PurchaseUnit;
}>;

/** What a step of a lot's life is known by in the change log; the order is the lot itself. */
function idOf(lotId: string, step: LifeStep): string | null {
  if (step.step === "ordered") return lotId;
  return step.step === "event" ? step.event.id : step.id;
}

/** A lot's whole life, the newest first: how much, for what, before and after, who recorded it when; each can be undone. */
export async function Events({ lotId, steps, projectOf, placeName, unit }: EventsProps) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const units = await unitWords();
  const { timeZone } = await workspaceSeen();
  const { items } = await changesOf(await scopeSeen(), { of: lotId, limit: 500 });
  // The change that made it: of an id with several, the oldest comes last and stays.
  const recorded = new Map(items.map((change) => [change.rowId, change]));
  const quantityOf = (step: LifeStep) => {
    if (step.step === "paid") return step.amount;
    const { text, exact } = step.step === "event" ? step.event.quantity : step.quantity;
    return step.step === "event" && step.event.kind === "stored"
      ? (step.event.amount ?? "–")
      : `${text} ${units.of(unit, exact)}`;
  };
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
        rows={steps.map((step, at) => {
          const id = idOf(lotId, step);
          const change = id === null ? undefined : recorded.get(id);
          const event = step.step === "event" ? step.event : null;
          const changed = (pair: Readonly<{ before: string; after: string }> | null | undefined) =>
            pair && pair.before !== pair.after ? `${pair.before} → ${pair.after}` : null;
          return {
            key: id === null ? `${step.step} ${at}` : `${step.step} ${id}`,
            faint: event?.undone === true,
            cells: [
              <StepWhat key="what" step={step} projectOf={projectOf} placeName={placeName} />,
              dayText(step.on, locale),
              quantityOf(step),
              changed(event?.free),
              changed(event?.there),
              change ? (
                <>
                  {change.actor}
                  <Below>{momentText(change.at, locale, timeZone)}</Below>
                </>
              ) : (
                "–"
              ),
              <StepUndo key="undo" lotId={lotId} step={step} />,
            ],
          };
        })}
      />
    </Part>
  );
}
