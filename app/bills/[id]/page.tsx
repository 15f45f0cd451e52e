import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { bill as billById, type KeptBill } from "../../../lib/data/bills.ts";
import { store } from "../../../lib/data/stores.ts";
import { type BillText, billText } from "../../../lib/show/bill-text.ts";
import { dayText } from "../../../lib/show/day-text.ts";
import { depositsText } from "../../../lib/show/deposits-text.ts";
import { quantityText } from "../../../lib/show/money-text.ts";
import { Button } from "../../_ui/button.client.tsx";
import { Figure, NotKnown } from "../../_ui/money-text.tsx";
import { Notice } from "../../_ui/notice.tsx";
import { PageHead, Part } from "../../_ui/page-head.tsx";
import { Table } from "../../_ui/table.tsx";
import { UndoBar } from "../../_ui/undo-bar.tsx";
import { unitWords } from "../../_words/unit-words.ts";
import { asked, type Query } from "../../_workspace/day-asked.ts";
import { idAsked } from "../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { redoBillForm, undoBillForm } from "../actions.ts";
import { BillTotals } from "../bill-totals.client.tsx";
import { billWords } from "../bill-words.ts";
import { redoDepositForm, undoDepositForm } from "../deposit-actions.ts";
import { Deposits } from "./deposits.tsx";

export const dynamic = "force-dynamic";

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations("bills"))("billTitle") };
}

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Query }>;

/** The lot goods handed back left: the one named, else the one the bill itself made of their material. */
function lotLeft({ lines }: KeptBill, at: number): string {
  const [line, materialId] = [lines[at], lines[at]?.materialId];
  const own = lines.find((other) => other.lotId !== null && other.materialId === materialId);
  return line?.returned?.lotId ?? own?.lotId ?? "";
}

/** The lines of a bill: what each comes to, what it bears of the whole, and the price and lot it was kept as. */
async function Lines({ bill, text }: Readonly<{ bill: KeptBill; text: BillText | null }>) {
  const t = await getTranslations("bills");
  const locale = await getLocale();
  const units = await unitWords();
  const figure = (amount: string | null | undefined) =>
    amount ? <Figure>{amount}</Figure> : <NotKnown>{t("totalNotKnown")}</NotKnown>;
  const rows = bill.lines.map((line, at) => {
    const material = line.materialId === null ? undefined : bill.terms?.materials.get(line.materialId);
    return {
      key: `${at}`,
      cells: [
        material?.name ?? line.text ?? "–",
        <Figure key="quantity">
          {quantityText(line.quantity, locale)} {units.of(line.unit, line.quantity.toFixed())}
        </Figure>,
        figure(text?.lines[at]?.net),
        figure(text?.lines[at]?.cost),
        <span key="made">
          {line.lotId === null ? null : <Link href={`/stock/${line.lotId}`}>{t("itsLot")}</Link>}{" "}
          {line.observationId === null ? null : (
            <Link href={`/materials/${line.materialId}`}>{t("itsPrice")}</Link>
          )}
          {line.stockEventId === null ? null : (
            <Link href={`/stock/${lotLeft(bill, at)}`}>{t("outOfLot")}</Link>
          )}
          {line.lotId === null && line.observationId === null && line.stockEventId === null
            ? t("nothingMade")
            : null}
        </span>,
      ],
    };
  });
  return (
    <Table
      caption={t("lines")}
      captionHidden
      cards
      columns={[
        { key: "what", label: t("what") },
        { key: "quantity", label: t("quantity"), figures: true },
        { key: "net", label: t("net"), figures: true },
        { key: "cost", label: t("lineCost"), figures: true },
        { key: "made", label: t("made") },
      ]}
      rows={rows}
    />
  );
}

/** A receipt or quote as it was entered, what it comes to, and what was made of it. */
export default async function BillPage({ params, searchParams }: Props) {
  const t = await getTranslations("bills");
  const locale = await getLocale();
  const ui = await getTranslations("ui");
  const scope = await scopeSeen();
  const id = idAsked((await params).id);
  const bill = await billById(scope, id);
  if (bill === null) notFound();
  const seller = await store(scope, bill.storeId);
  const text = bill.terms === null ? null : billText(bill, bill.terms, locale);
  const title = t("titleOf", {
    kind: t(bill.kind),
    store: seller?.name ?? "–",
    day: dayText(bill.on, locale),
  });
  const lots = bill.lines.filter(({ lotId }) => lotId !== null).length;
  const prices = bill.lines.filter(({ observationId }) => observationId !== null).length;
  const done = (await asked(searchParams, "done")) ?? "";
  const undone = bill.deletedAt !== null;
  const event = (await asked(searchParams, "event")) ?? "";
  const day = await today();
  const deposits =
    bill.terms === null ? null : depositsText(bill, bill.terms, { events: bill.deposited, day }, locale);
  return (
    <>
      {done === "kept" && !undone ? (
        <UndoBar undo={{ action: undoBillForm, fields: { id }, label: ui("undo") }}>
          {t("doneKept", { lots, prices })}
        </UndoBar>
      ) : null}
      {undone ? (
        <UndoBar undo={{ action: redoBillForm, fields: { id }, label: t("bringBack") }}>
          {t("undone")}
        </UndoBar>
      ) : null}
      {done === "deposit" && !undone ? (
        <UndoBar undo={{ action: undoDepositForm, fields: { id, event }, label: ui("undo") }}>
          {t("doneDeposit")}
        </UndoBar>
      ) : null}
      {done === "deposit-undone" && !undone ? (
        <UndoBar undo={{ action: redoDepositForm, fields: { id, event }, label: t("bringBack") }}>
          {t("doneDepositUndone")}
        </UndoBar>
      ) : null}
      {done === "deposit-not" && !undone ? <Notice tone="warn">{t("depositNotBack")}</Notice> : null}
      {done === "not-redone" && undone ? <Notice tone="warn">{t("notRedone")}</Notice> : null}
      {done === "redone" && !undone ? <UndoBar>{t("doneRedone")}</UndoBar> : null}
      <PageHead title={title} up={<Link href="/bills">{t("up")}</Link>} />
      {bill.kind === "quote" && bill.until !== null ? (
        <p>{t("holdsUntil", { day: dayText(bill.until, locale) })}</p>
      ) : null}
      {text === null ? (
        <Notice tone="warn">{t("taxNotKnown")}</Notice>
      ) : (
        <BillTotals text={text} words={await billWords("")} />
      )}
      {deposits === null ? null : (
        <Deposits id={id} text={deposits} currency={bill.currency} today={day} undone={undone} />
      )}
      <Part title={t("lines")} note={t("costNote")}>
        <Lines bill={bill} text={text} />
      </Part>
      {bill.note === null ? null : <p>{bill.note}</p>}
      {undone || done === "kept" ? null : (
        <form action={undoBillForm}>
          <input type="hidden" name="id" value={id} />
          <Button kind="quiet">{t("takeBack")}</Button>
        </form>
      )}
    </>
  );
}
