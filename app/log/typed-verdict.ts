import { tenfoldOff } from "../../lib/show/aisle-doubt.ts";
import type { SnapshotMaterial } from "../../lib/show/aisle-snapshot.ts";
import { type AisleVerdict, aisleVerdict } from "../../lib/show/aisle-verdict.ts";
import { seenOfRow } from "../_offline/since.ts";
import type { PriceEntrySent } from "./check-price.ts";
import { rowOfPrice } from "./rows-of-price.ts";
import type { Aisle } from "./use-aisle.client.ts";

const NOT_KEPT = { newId: () => "typed", at: 0, workspaceId: "", restsOn: [] } as const;

/** What a price would mean that is typed and not kept yet. */
export function typedVerdict(entry: PriceEntrySent, plain: SnapshotMaterial, aisle: Aisle): AisleVerdict {
  const seen = seenOfRow(rowOfPrice(entry, NOT_KEPT));
  return aisleVerdict(seen, plain, aisle.snapshot, aisle.today, aisle.since);
}

/** Whether it looks ten times off. "None left" has no price to doubt. */
export function doubtOf(entry: PriceEntrySent, plain: SnapshotMaterial, aisle: Aisle) {
  return entry.terms === "none-left" ? null : tenfoldOff(typedVerdict(entry, plain, aisle).logged);
}
