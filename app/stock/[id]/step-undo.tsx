import { getLocale, getTranslations } from "next-intl/server";
import { dayText } from "../../../lib/show/day-text.ts";
import type { LifeStep } from "../../../lib/show/lot-life.ts";
import { Button } from "../../_ui/button.client.tsx";
import { redoEvent, undoEvent } from "../event-actions.ts";
import { undoPaymentForm, undoReceiptForm } from "../part-actions.ts";

type StepUndoProps = Readonly<{ lotId: string; step: LifeStep }>;

/** Takes a step of a lot's life back, or brings it back. The order itself goes only with the lot. */
export async function StepUndo({ lotId, step }: StepUndoProps) {
  const t = await getTranslations("stock");
  const ui = await getTranslations("ui");
  const life = await getTranslations("lotLife");
  const day = dayText(step.on, await getLocale());
  if (step.step === "ordered") return null;
  const { event, received, paid } = {
    event: step.step === "event" ? step.event : null,
    received: step.step === "received" ? step : null,
    paid: step.step === "paid" ? step : null,
  };
  const id = event?.id ?? received?.id ?? paid?.id ?? null;
  if (id === null) return null;
  const undone = event?.undone === true;
  const word = undone ? t("redo") : ui("undo");
  const what = event
    ? `${t(`kinds.${event.kind}`)}, ${event.quantity.text}`
    : received
      ? `${life("steps.received")}, ${received.quantity.text}`
      : `${life("steps.paid")}, ${paid?.amount ?? ""}`;
  const action = undone ? redoEvent : event ? undoEvent : received ? undoReceiptForm : undoPaymentForm;
  return (
    <form action={action}>
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="lotId" value={lotId} />
      <Button kind="quiet" label={`${word}: ${what}, ${day}`}>
        {word}
      </Button>
    </form>
  );
}
