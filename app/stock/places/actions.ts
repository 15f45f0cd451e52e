"use server";

import { redirect } from "next/navigation";
import { getLocale, getTranslations } from "next-intl/server";
import { addPlace, archivePlace, changePlace, place, restorePlace } from "../../../lib/data/places.ts";
import { placeEntry, placePatch } from "../../../lib/stock/place-entry.ts";
import { answer, writeChecked } from "../../_forms/answer.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed, heldBack } from "../../_gate/allowed.ts";
import type { FormState } from "../../_ui/form-state.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { placeTyped } from "./place-typed.ts";

async function names() {
  const t = await getTranslations("places");
  return fieldNames({
    name: t("name"),
    note: t("note"),
    area: t("limits.area"),
    volume: t("limits.volume"),
    weight: t("limits.weight"),
    count: t("limits.count"),
  });
}

/** Adds a place under the id its form was drawn with. */
export async function addPlaceForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("addPlaceForm", previous, form);
  if (held !== null) return held;
  const input = placeTyped(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    () =>
      writeChecked(placeEntry, input, async (entry) =>
        addPlace(await scopeSeen(), typed(form, "id") ?? "", entry),
      ),
    ({ id }) => `/stock/places/${id}?done=added`,
  );
}

/** Changes a place: its name, its limits; an empty limit is none. */
export async function changePlaceForm(previous: FormState, form: FormData): Promise<FormState> {
  const held = await heldBack("changePlaceForm", previous, form);
  if (held !== null) return held;
  const id = typed(form, "ofPlace") ?? "";
  const input = placeTyped(form, await getLocale());
  return answer(
    previous,
    form,
    await names(),
    () => writeChecked(placePatch, input, async (patch) => changePlace(await scopeSeen(), id, patch)),
    () => `/stock/places/${id}?done=changed`,
    { now: async () => place(await scopeSeen(), id) },
  );
}

/** Out of the lists: nothing is moved there any more; what lies there stays. */
export async function archivePlaceForm(form: FormData): Promise<void> {
  await allowed("archivePlaceForm");
  const id = typed(form, "id") ?? "";
  const written = await archivePlace(await scopeSeen(), id);
  redirect(written.ok ? `/stock/places/${id}?done=archived` : "/stock/places");
}

/** Back in use. */
export async function restorePlaceForm(form: FormData): Promise<void> {
  await allowed("restorePlaceForm");
  const id = typed(form, "id") ?? "";
  const written = await restorePlace(await scopeSeen(), id);
  redirect(`/stock/places/${id}?done=${written.ok ? "restored" : "name-taken"}`);
}
