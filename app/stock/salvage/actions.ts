"use server";

import { getLocale, getTranslations } from "next-intl/server";
import { addSalvage, salvage } from "../../../lib/data/salvage.ts";
import { correctSalvage } from "../../../lib/data/salvage-corrections.ts";
import type { Written } from "../../../lib/fault.ts";
import { salvageCorrection, salvageEntry } from "../../../lib/stock/salvage-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import type { FieldNames } from "../../_forms/fault-words.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed, typedAll, typedOrNull } from "../../_forms/typed.ts";
import { heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { typedSalvage } from "./salvage-typed.ts";

/** The name of a field; of a row of the tally with the number it has in the form. */
async function names(): Promise<FieldNames> {
  const t = await getTranslations("salvage");
  const plain = fieldNames({
    materialId: t("material"),
    reclaimedFrom: t("from"),
    projectId: t("project"),
    hours: t("hours"),
    hourlyRate: t("hourlyRate"),
    hauling: t("hauling"),
    purchasePrice: t("purchasePrice"),
    currency: t("currency"),
    condition: t("conditionPercent"),
    quantity: t("quantity"),
    on: t("on"),
    storedAt: t("storedAt"),
    note: t("note"),
  });
  return (path) => {
    const [, row, field] = /^tally\.(\d+)\.(pieces|length)$/.exec(path) ?? [];
    if (row === undefined) return plain(path);
    return `${t("tallyRow")} ${Number(row) + 1}, ${field === "pieces" ? t("pieces") : t("length")}`;
  };
}

/** Faults of a tally's rows at the rows of the form they were typed in. */
function atRows<T>(written: Written<T>, rows: readonly number[]): Written<T> {
  if (written.ok || written.why !== "faults") return written;
  const faults = written.faults.map((fault) => ({
    ...fault,
    path: fault.path.replace(/^tally\.(\d+)/, (_, at) => `tally.${rows[Number(at)] ?? at}`),
  }));
  return { ...written, faults };
}

/** Salvage counted in; then its lot. */
export async function countInForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("countInForm", previous, form);
  if (held !== null) return held;
  const { entry, rows } = typedSalvage(form, await getLocale());
  const whole = {
    ...entry,
    materialId: typedAll(form, "materialId")[0],
    storedAt: typedOrNull(form, "storedAt"),
  };
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      const write = writeChecked(salvageEntry, whole, (read) =>
        addSalvage(scope, typed(form, "id") ?? "", read),
      );
      return atRows(await write, rows);
    },
    ({ lot }) => `/stock/${lot.id}?done=counted-in`,
  );
}

/** Salvage corrected; then its lot. */
export async function correctForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("correctForm", previous, form);
  if (held !== null) return held;
  const { entry, rows } = typedSalvage(form, await getLocale());
  const lotId = typed(form, "lotId") ?? "";
  return answer(
    previous,
    form,
    await names(),
    async () => {
      const scope = await scopeSeen();
      return atRows(
        await writeChecked(salvageCorrection, entry, (read) => correctSalvage(scope, lotId, read)),
        rows,
      );
    },
    ({ lot }) => `/stock/${lot.id}?done=salvage-corrected`,
    { now: async () => salvage(await scopeSeen(), lotId) },
  );
}
