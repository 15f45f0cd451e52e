"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { addStockCount } from "../../lib/data/stock-counts.ts";
import { takeBackUnused } from "../../lib/data/stock-leftovers.ts";
import { moveBetween } from "../../lib/data/stock-transfers.ts";
import { transferEntry, unusedEntry } from "../../lib/stock/stock-act-entry.ts";
import { stockCountEntry } from "../../lib/stock/stock-event-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAmount } from "../_forms/typed.ts";
import { heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";

/** How many of a lot are there: what is found or missing is booked; as in the books, nothing is. */
export async function countLotForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("countLotForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    quantity: typedAmount(form, "quantity", await getLocale()),
    on: typed(form, "on"),
    reason: typed(form, "reason") ?? null,
  };
  return answer(
    previous,
    form,
    fieldNames({ quantity: t("countLot.many"), on: stock("on"), reason: stock("reason") }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(stockCountEntry, input, (count) =>
        addStockCount(scope, lotId, typed(form, "id") ?? "", count),
      );
    },
    (event) => `/stock/${lotId}?done=${event === null ? "as-in-books" : `event&event=${event.id}`}`,
  );
}

/** So much of a draw came back from the site unused. */
export async function unusedForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("unusedForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const lotId = typed(form, "lotId") ?? "";
  const input = {
    quantity: typedAmount(form, "quantity", await getLocale()),
    reason: typed(form, "reason") ?? null,
  };
  return answer(
    previous,
    form,
    fieldNames({ quantity: t("unused.many"), reason: stock("reason") }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(unusedEntry, input, (entry) =>
        takeBackUnused(scope, typed(form, "drawId") ?? "", typed(form, "id") ?? "", entry),
      );
    },
    ({ id }) => `/stock/${lotId}?done=act&act=${id}`,
  );
}

/** From one project to another, at its own cost. `held` names the need, and the lot where it is chosen with it. */
export async function transferForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("transferForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("lotLife");
  const stock = await getTranslations("stock");
  const [fromRequirementId, heldLot] = (typed(form, "held") ?? "").split(" ");
  const lotId = typed(form, "lotId") ?? heldLot ?? null;
  const projectId = typed(form, "projectId");
  const input = {
    fromRequirementId,
    toRequirementId: typed(form, "toRequirementId"),
    lotId,
    quantity: typedAmount(form, "quantity", await getLocale()),
    on: typed(form, "on"),
    reason: typed(form, "reason") ?? null,
  };
  const next = projectId === undefined ? `/stock/${lotId ?? ""}` : `/projects/${projectId}`;
  return answer(
    previous,
    form,
    fieldNames({
      fromRequirementId: t("transfer.from"),
      toRequirementId: t("transfer.to"),
      quantity: t("transfer.many"),
      on: stock("on"),
      reason: stock("reason"),
    }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(transferEntry, input, (entry) =>
        moveBetween(scope, typed(form, "id") ?? "", entry),
      );
    },
    ({ id }) => `${next}?done=act&act=${id}`,
  );
}
