"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { tellAtOrBelow, wantedPrice } from "../../../lib/data/reminder-wishes.ts";
import { wantedPriceEntry } from "../../../lib/reminders/reminder-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed, typedAmount, typedOrNull } from "../../_forms/typed.ts";
import { allowed, heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** The material's page, saying that the price to be told at is another one, and what it was. */
function toldAt(id: string, amount: string | null, was: string | null): string {
  const query = new URLSearchParams({ told: amount ?? "off", was: was ?? "off" });
  return `/materials/${id}?${query}#tell-me`;
}

/** Sets the price a material is told at; empty: it is told no longer. */
export async function tellMeForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("tellMeForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("reminders.tellMe");
  const id = typed(form, "materialId") ?? "";
  const amount = typedAmount(form, "amount", await getLocale()) ?? null;
  return answer(
    previous,
    form,
    fieldNames({ amount: t("title") }),
    () =>
      writeChecked(wantedPriceEntry, { amount }, async (entry) =>
        tellAtOrBelow(await scopeSeen(), id, entry),
      ),
    ({ before }) => toldAt(id, amount, before?.amount.toFixed() ?? null),
    { now: async () => wantedPrice(await scopeSeen(), id) },
  );
}

/** Sets it back to what it was. */
export async function tellMeAsBefore(form: FormData): Promise<void> {
  await allowed("tellMeAsBefore");
  const id = typed(form, "materialId");
  const amount = typedOrNull(form, "amount");
  const read = wantedPriceEntry.safeParse({ amount });
  if (!isId(id) || !read.success) redirect("/materials");
  const written = await tellAtOrBelow(await scopeSeen(), id, read.data);
  redirect(written.ok ? toldAt(id, amount, written.value.before?.amount.toFixed() ?? null) : "/materials");
}
