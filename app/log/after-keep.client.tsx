"use client";

import Link from "next/link";
import { v7 } from "uuid";
import { openedMaterial } from "../../lib/show/aisle-opened.ts";
import { aisleVerdict } from "../../lib/show/aisle-verdict.ts";
import { readBack } from "../../lib/show/parse-amount.ts";
import type { Row } from "../_offline/log-database.ts";
import { keepRows, takeOut } from "../_offline/outbox.ts";
import { seenOfRow } from "../_offline/since.ts";
import look from "../_ui/notice.module.css";
import { Bought } from "./bought.client.tsx";
import { Tap } from "./tap.client.tsx";
import type { Aisle } from "./use-aisle.client.ts";
import { Verdict } from "./verdict.client.tsx";
import { logWords, unitWord } from "./words.ts";

/** What was done last: a price kept, a price taken back, so many bought. */
export type Kept =
  | Readonly<{ kind: "price"; row: Row }>
  | Readonly<{ kind: "undone"; row: Row; queued: boolean }>
  | Readonly<{ kind: "bought"; id: string; materialId: string; quantity: string }>;

type AfterKeepProps = Readonly<{
  aisle: Aisle;
  kept: Kept | null;
  locale: string;
  onKept: (kept: Kept | null) => void;
}>;

function takeBackRow(row: Row, taken: boolean): Row {
  const { id: observationId, workspaceId } = row;
  return {
    id: v7(),
    workspaceId,
    kind: "take-back",
    said: { observationId, taken },
    at: Date.now(),
    state: "queued",
    restsOn: [observationId],
  };
}

/** Takes a price back: out of the phone where it was never sent, else by an entry of its own that follows it. */
async function undo(row: Row): Promise<Kept> {
  const out = await takeOut(row.id);
  if (!out) await keepRows([takeBackRow(row, true)]);
  return { kind: "undone", row, queued: !out };
}

async function redo({ row, queued }: Extract<Kept, { kind: "undone" }>): Promise<Kept> {
  await keepRows([queued ? takeBackRow(row, false) : row]);
  return { kind: "price", row };
}

/** Above the form after something was kept: what it means, the way back, and "bought some of it". */
export function AfterKeep({ aisle, kept, locale, onKept }: AfterKeepProps) {
  const words = logWords(locale);
  if (kept === null) return null;
  if (kept.kind === "undone")
    return (
      <div className={look.undo} role="status">
        <p>{words.undone}</p>
        <Tap kind="quiet" onTap={() => void redo(kept).then(onKept)}>
          {words.bringBack}
        </Tap>
      </div>
    );
  if (kept.kind === "bought") {
    const material = aisle.snapshot.materials.find(({ id }) => id === kept.materialId);
    return (
      <div className={look.undo} role="status">
        <p>
          {words.boughtDone(
            readBack(kept.quantity, locale),
            unitWord(material?.unit ?? "each", kept.quantity),
            material?.name ?? "–",
          )}{" "}
          <Link href={`/stock/${kept.id}`}>{words.toLot}</Link>
        </p>
      </div>
    );
  }
  const observation = seenOfRow(kept.row);
  const plain = aisle.snapshot.materials.find(({ id }) => id === observation.materialId);
  if (plain === undefined) return null;
  const verdict = aisleVerdict(observation, plain, aisle.snapshot, aisle.today, aisle.since);
  const { material } = openedMaterial(plain, aisle.snapshot);
  const { logged } = verdict;
  return (
    <>
      <Verdict
        aisle={aisle}
        observation={observation}
        verdict={verdict}
        material={material}
        locale={locale}
        onUndo={() => void undo(kept.row).then(onKept)}
      />
      {logged.offer === null && observation.terms !== "paid" ? null : (
        <Bought
          key={kept.row.id}
          aisle={aisle}
          observation={observation}
          logged={logged}
          unit={plain.unit}
          locale={locale}
          onBought={(id, quantity) => onKept({ kind: "bought", id, materialId: plain.id, quantity })}
        />
      )}
      <h2>{words.next}</h2>
    </>
  );
}
