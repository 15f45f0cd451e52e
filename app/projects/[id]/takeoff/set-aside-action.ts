"use server";

import { getTranslations } from "next-intl/server";
import { addStockEvent } from "../../../../lib/data/stock-events.ts";
import type { Written } from "../../../../lib/fault.ts";
import { stockEventEntry } from "../../../../lib/stock/stock-event-entry.ts";
import { answer, writeChecked } from "../../../_forms/answer.ts";
import { fieldNames } from "../../../_forms/field-names.ts";
import { typed, typedAll } from "../../../_forms/typed.ts";
import { heldBack } from "../../../_gate/allowed.ts";
import type { FormState } from "../../../_ui/form-state.ts";
import { scopeSeen } from "../../../_workspace/workspace-seen.ts";

/**
 * Free stock set aside for needs of a takeoff, each as ticked. Each is an entry of its own: sent again after a refusal,
 * what was accepted before is not set aside twice.
 */
export async function setAsideMeasured(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("setAsideMeasured", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("takeoff");
  const scope = await scopeSeen();
  const on = typed(form, "on");
  const write = async (): Promise<Written<unknown>> => {
    const ticked = typedAll(form, "asides");
    if (ticked.length === 0)
      return { ok: false, why: "faults", faults: [{ path: "asides", code: "missing" }] };
    for (const aside of ticked) {
      const [requirementId, lotId = "", id = "", quantity] = aside.split(" ");
      const input = { kind: "allocated", quantity, on, requirementId };
      const written = await writeChecked(stockEventEntry, input, (entry) =>
        addStockEvent(scope, lotId, id, entry),
      );
      if (!written.ok && written.why === "faults")
        return { ...written, faults: written.faults.map((fault) => ({ ...fault, path: "asides" })) };
      if (!written.ok) return written;
    }
    return { ok: true, value: null, repeated: false };
  };
  return answer(
    previous,
    form,
    fieldNames({ asides: t("asideLabel") }),
    write,
    () => `/projects/${typed(form, "projectId") ?? ""}?done=set-aside`,
  );
}
