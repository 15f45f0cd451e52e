"use server";

import { redirect } from "next/navigation";
import { redoAct, type StoredAct, undoAct } from "../../lib/data/stock-acts.ts";
import type { Written } from "../../lib/fault.ts";
import { typed } from "../_forms/typed.ts";
import { allowed } from "../_gate/allowed.ts";
import { scopeSeen } from "../_workspace/workspace-seen.ts";
import { afterRefusal } from "./undo-refused.ts";

/** A page of stock or of a project; anything else a form sends leads to Stock. */
function backTo(form: FormData): string {
  const back = typed(form, "back") ?? "";
  return /^\/(stock|projects)(\/[\w-]+)*$/.test(back) ? back : "/stock";
}

function after(back: string, written: Written<StoredAct>): string {
  return written.ok ? `${back}?done=act&act=${written.value.id}` : `${back}?${afterRefusal(written)}`;
}

/** Takes back all that was done as one. */
export async function undoActForm(form: FormData): Promise<void> {
  await allowed("undoActForm");
  const written = await undoAct(await scopeSeen(), typed(form, "id") ?? "");
  redirect(after(backTo(form), written));
}

/** Lets all of it have happened again. */
export async function redoActForm(form: FormData): Promise<void> {
  await allowed("redoActForm");
  const written = await redoAct(await scopeSeen(), typed(form, "id") ?? "");
  redirect(after(backTo(form), written));
}
