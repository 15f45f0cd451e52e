import { getLocale, getTranslations } from "next-intl/server";
import { lotPayment } from "../../../lib/data/lot-payments.ts";
import { lotReceipt } from "../../../lib/data/lot-receipts.ts";
import type { StoredEvent } from "../../../lib/data/stock-events.ts";
import type { PurchaseUnit } from "../../../lib/measure/units.ts";
import { moneyText, quantityText } from "../../../lib/show/money-text.ts";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { ActBar } from "../act-bar.tsx";
import { redoEvent, undoEvent } from "../event-actions.ts";
import { redoPaymentForm, redoReceiptForm, undoPaymentForm, undoReceiptForm } from "../part-actions.ts";

type DoneProps = Readonly<{
  lotId: string;
  query: Query;
  events: readonly StoredEvent[];
  unit: PurchaseUnit;
  name: string;
}>;

/** What was just done to the lot, and the way back; or why something could not be taken back. */
export async function Done({ lotId, query, events, unit, name }: DoneProps) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  const done = await asked(query, "done");
  if (done === "recorded" || done === "restored")
    return <UndoBar>{t(done === "recorded" ? "doneLot" : "doneRestored", { material: name })}</UndoBar>;
  if (done === "as-in-books") return <UndoBar>{life("doneAsInBooks")}</UndoBar>;
  if (done === "received" || done === "paid") return <DonePart lotId={lotId} query={query} done={done} />;
  const id = await asked(query, "event");
  const event = events.find((known) => known.id === id);
  if (event === undefined || (done !== "event" && done !== "undone"))
    return <ActBar query={query} back={`/stock/${lotId}`} />;
  return <DoneEvent event={event} unit={unit} />;
}

async function DoneEvent({ event, unit }: Readonly<{ event: StoredEvent; unit: PurchaseUnit }>) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  const ui = await getTranslations("ui");
  const locale = await getLocale();
  const fields = { id: event.id, lotId: event.lotId };
  if (event.undoneAt !== null)
    return <UndoBar undo={{ action: redoEvent, fields, label: t("redo") }}>{t("doneUndone")}</UndoBar>;
  const words = {
    quantity: quantityText(event.quantity, locale),
    unit: (await unitWords()).of(unit, event.quantity.toFixed()),
    amount: event.amount === null ? "" : moneyText(event.amount, locale, { currency: true }),
  };
  return (
    <UndoBar undo={{ action: undoEvent, fields, label: ui("undo") }}>
      {life(`done.${event.kind}`, words)}
    </UndoBar>
  );
}

type DonePartProps = Readonly<{ lotId: string; query: Query; done: "received" | "paid" }>;

/** A receipt or a payment, with its way back; undone, with the way forth. */
async function DonePart({ lotId, query, done }: DonePartProps) {
  const t = await getTranslations("stock");
  const life = await getTranslations("lotLife");
  const ui = await getTranslations("ui");
  const scope = await scopeSeen();
  const id = await asked(query, done === "received" ? "receipt" : "payment");
  if (!isId(id)) return null;
  const part = await (done === "received" ? lotReceipt(scope, id) : lotPayment(scope, id));
  if (part === null || part.lotId !== lotId) return null;
  const fields = { id, lotId };
  if (part.undoneAt !== null) {
    const action = done === "received" ? redoReceiptForm : redoPaymentForm;
    return <UndoBar undo={{ action, fields, label: t("redo") }}>{t("doneUndone")}</UndoBar>;
  }
  const action = done === "received" ? undoReceiptForm : undoPaymentForm;
  return <UndoBar undo={{ action, fields, label: ui("undo") }}>{life(`done.${done}`)}</UndoBar>;
}
