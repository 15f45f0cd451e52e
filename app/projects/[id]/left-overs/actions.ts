"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { returnLeftovers } from "../../../../lib/data/stock-leftovers.ts";
import { leftoversEntry } from "../../../../lib/stock/stock-act-entry.ts";
import { answer, writeChecked } from "../../../_forms/answer.ts";
import { rowsTyped, typed, typedAmount } from "../../../_forms/typed.ts";
import { heldBack } from "../../../_gate/allowed.ts";
import type { FormState } from "../../../_ui/form-state.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";

/** The draws of which something came back: where they stand in the form, and how much. Empty and 0: nothing came back. */
function cameBack(form: FormData, locale: string) {
  return rowsTyped(form, "unused").flatMap((row) => {
    const quantity = typedAmount(form, `unused.${row}.quantity`, locale);
    const nothing = quantity === undefined || /^0(\.0*)?$/.test(quantity);
    return nothing ? [] : [{ row, eventId: typed(form, `unused.${row}.eventId`) ?? "", quantity }];
  });
}

/** What is over at the end of a project goes back to stock at cost, all of it in one step. */
export async function leftOversForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("leftOversForm", previous, form);
  if (held !== null) return held;
  const stock = await getTranslations("stock");
  const projectId = typed(form, "projectId") ?? "";
  const back = cameBack(form, await getLocale());
  const input = {
    projectId,
    on: typed(form, "on"),
    unused: back.map(({ eventId, quantity }) => ({ eventId, quantity })),
    reason: typed(form, "reason") ?? null,
  };
  const rowOf = (path: string) => {
    const at = /^unused\.(\d+)/.exec(path)?.[1];
    return at === undefined ? undefined : back[Number(at)]?.row;
  };
  const state = await answer(
    previous,
    form,
    (path) => {
      const row = rowOf(path);
      if (row !== undefined) return typed(form, `unused.${row}.name`) ?? null;
      return path === "on" ? stock("on") : path === "reason" ? stock("reason") : null;
    },
    async () => {
      const scope = await scopeSeen();
      return writeChecked(leftoversEntry, input, (entry) =>
        returnLeftovers(scope, typed(form, "id") ?? "", entry),
      );
    },
    ({ id }) => `/projects/${projectId}?done=act&act=${id}`,
  );
  const faults = state.faults.map((fault) => {
    const row = rowOf(fault.path);
    return row === undefined ? fault : { ...fault, path: `unused.${row}.quantity` };
  });
  return { ...state, faults };
}
