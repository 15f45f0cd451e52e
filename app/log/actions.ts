"use server";

import { redirect } from "next/navigation";
import { getLocale } from "next-intl/server";
import { addLot } from "../../lib/data/lots.ts";
import { material } from "../../lib/data/materials.ts";
import { addObservation, deleteObservation, undeleteObservation } from "../../lib/data/observations.ts";
import { store } from "../../lib/data/stores.ts";
import { type Fault, faultsOf } from "../../lib/fault.ts";
import { freeEntry } from "../../lib/prices/free-entry.ts";
import { observationEntry } from "../../lib/prices/observation-entry.ts";
import { lotEntry } from "../../lib/stock/lot-entry.ts";
import { answer, writeChecked } from "../_forms/answer.ts";
import { fieldNames } from "../_forms/field-names.ts";
import { typed, typedAmount } from "../_forms/typed.ts";
import { allowed, heldBack } from "../_gate/allowed.ts";
import type { FormState } from "../_ui/form-state.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { rememberStore } from "./last-store.ts";
import { freeTyped, typedPrice, withFree } from "./typed-price.ts";
import { logWords } from "./words.ts";

function faulty(faults: readonly Fault[]) {
  return { ok: false, why: "faults", faults } as const;
}

async function keep(form: FormData, locale: string) {
  const scope = await scopeSeen();
  const storeId = typed(form, "storeId");
  const at = storeId === undefined ? null : await store(scope, storeId);
  const input = typedPrice(form, at, locale, logWords(locale).orderChargeName);
  // No unit chosen (a form without JavaScript): the price is for one of what the material is bought by.
  if ("per" in input && input.per.unit === undefined && input.materialId !== undefined)
    input.per.unit = (await material(scope, input.materialId))?.purchaseUnit;
  const free = freeTyped(form, locale);
  const given = free === null ? null : freeEntry.safeParse(free);
  if (given?.success === false) {
    const rest = observationEntry.safeParse(input);
    return faulty([...faultsOf(given.error), ...(rest.success ? [] : faultsOf(rest.error))]);
  }
  const priced = given === null ? input : withFree(input, given.data);
  const written = await writeChecked(observationEntry, priced, (entry) =>
    addObservation(scope, typed(form, "id") ?? "", entry),
  );
  if (written.ok) await rememberStore(written.value.storeId);
  return written;
}

/** Keeps a logged price; then says what it means. */
export async function keepPrice(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("keepPrice", previous, form);
  if (held !== null) return held;
  const locale = await getLocale();
  const words = logWords(locale);
  const names = fieldNames({
    materialId: words.material,
    storeId: words.store,
    amount: words.amount,
    "per quantity": words.per,
    "per unit": words.unit,
    seenOn: words.seenOn,
    from: words.from,
    until: words.until,
    minQuantity: words.minQuantity,
    maxQuantity: words.maxQuantity,
    packSize: words.packSize,
    paidFor: words.paidFor,
    freeWith: words.freeWith,
    "fees amount": words.orderCharge,
    note: words.note,
  });
  return answer(
    previous,
    form,
    names,
    () => keep(form, locale),
    (seen) => `/log?seen=${seen.id}&of=${seen.materialId}`,
  );
}

/** "Bought n of it": the lot at the price just logged, set aside for a requirement, in one go. */
export async function boughtOfIt(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("boughtOfIt", previous, form);
  if (held !== null) return held;
  const locale = await getLocale();
  const words = logWords(locale);
  const requirementId = typed(form, "requirementId");
  const input = {
    materialId: typed(form, "materialId"),
    storeId: typed(form, "storeId"),
    observationId: typed(form, "observationId"),
    terms: typed(form, "terms"),
    origin: "bought",
    quantity: typedAmount(form, "quantity", locale),
    orderedOn: typed(form, "orderedOn"),
  };
  return answer(
    previous,
    form,
    fieldNames({ quantity: words.howMany, orderedOn: words.boughtOn, requirementId: words.forWhat }),
    async () => {
      const scope = await scopeSeen();
      return writeChecked(lotEntry, input, (entry) =>
        addLot(scope, typed(form, "id") ?? "", entry, { allocateTo: requirementId }),
      );
    },
    (lot) => `/log?bought=${lot.id}`,
  );
}

/** Takes a logged price back. */
export async function takeBack(form: FormData): Promise<void> {
  await allowed("takeBack");
  const id = typed(form, "id") ?? "";
  const written = await deleteObservation(await scopeSeen(), id);
  redirect(written.ok ? `/log?undone=${id}` : "/log?cannot=1");
}

/** Brings a price taken back into the books again. */
export async function bringBack(form: FormData): Promise<void> {
  await allowed("bringBack");
  const id = typed(form, "id") ?? "";
  const written = await undeleteObservation(await scopeSeen(), id);
  redirect(written.ok ? `/log?seen=${id}&of=${written.value.materialId}` : "/log?cannot=1");
}
