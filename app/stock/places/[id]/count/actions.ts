"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { countPlace } from "../../../../../lib/data/stock-place-acts.ts";
import { placeCountEntry } from "../../../../../lib/stock/stock-act-entry.ts";
import { answer, refused, writeChecked } from "../../../../_forms/answer.ts";
import type { FieldNames } from "../../../../_forms/fault-words.ts";
import { rowsTyped, typed, typedAmount } from "../../../../_forms/typed.ts";
import { heldBack } from "../../../../_gate/allowed.ts";
import type { FormState } from "../../../../_ui/form-state.ts";
import { scopeSeen, today } from "../../../../_workspace/workspace-seen.ts";
import { writtenCounts } from "./asked-count.ts";

/** The rows of the form that were filled in: where they stand in it, and how many were counted. */
function typedCounts(form: FormData, locale: string) {
  return rowsTyped(form, "counts").flatMap((row) => {
    const quantity = typedAmount(form, `counts.${row}.quantity`, locale);
    return quantity === undefined ? [] : [{ row, lotId: typed(form, `counts.${row}.lotId`) ?? "", quantity }];
  });
}

type Counts = ReturnType<typeof typedCounts>;

/** An entry leaves empty rows out; its faults belong to the rows as they stand in the form, and are called by their lot. */
async function namesIn(form: FormData, counts: Counts): Promise<FieldNames> {
  const t = await getTranslations("places");
  const stock = await getTranslations("stock");
  return (path) => {
    const at = /^counts\.(\d+)/.exec(path)?.[1];
    if (at !== undefined) return typed(form, `counts.${counts[Number(at)]?.row ?? at}.name`) ?? null;
    return path === "on" ? t("count.on") : path === "reason" ? stock("reason") : null;
  };
}

function inForm(state: FormState, counts: Counts): FormState {
  const faults = state.faults.map((fault) => {
    const at = /^counts\.(\d+)/.exec(fault.path)?.[1];
    const row = at === undefined ? undefined : counts[Number(at)]?.row;
    return row === undefined ? fault : { ...fault, path: `counts.${row}.quantity` };
  });
  return { ...state, faults };
}

function input(form: FormData, counts: Counts) {
  return {
    on: typed(form, "on"),
    counts: counts.map(({ lotId, quantity }) => ({ lotId, quantity })),
    reason: typed(form, "reason") ?? null,
  };
}

/** What was counted, checked and shown beside the books; nothing is booked yet. */
export async function previewCount(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("previewCount", previous, form);
  if (held !== null) return held;
  const placeId = typed(form, "ofPlace") ?? "";
  const counts = typedCounts(form, await getLocale());
  const now = await today();
  const state = await answer(
    previous,
    form,
    await namesIn(form, counts),
    () =>
      writeChecked(placeCountEntry, input(form, counts), async (entry) =>
        entry.on > now
          ? refused({ path: "on", code: "day-ahead" })
          : { ok: true as const, value: entry, repeated: false },
      ),
    ({ on, reason }) => {
      const asked = new URLSearchParams({ on, counts: writtenCounts(counts), reason: reason ?? "" });
      return `/stock/places/${placeId}/count?${asked}#differences`;
    },
  );
  return inForm(state, counts);
}

/** Books the differences of all lots counted, as one. */
export async function bookCount(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("bookCount", previous, form);
  if (held !== null) return held;
  const placeId = typed(form, "ofPlace") ?? "";
  const counts = typedCounts(form, await getLocale());
  const state = await answer(
    previous,
    form,
    await namesIn(form, counts),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(placeCountEntry, input(form, counts), (entry) =>
        countPlace(scope, placeId, typed(form, "id") ?? "", entry),
      );
    },
    ({ id, events }) =>
      `/stock/places/${placeId}?done=${events.length === 0 ? "as-in-books" : "act"}&act=${id}`,
  );
  return inForm(state, counts);
}
