"use server";

import { redirect } from "next/navigation";
import { setFileUndone } from "../../../lib/data/taken-files.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed } from "../../_gate/allowed.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { placeOfFiles } from "./place-of-files.ts";

/** Takes back all that a file added. */
export async function undoFile(form: FormData): Promise<void> {
  await allowed("undoFile");
  const id = typed(form, "id");
  if (isId(id)) await setFileUndone(await scopeSeen(), id, true);
  redirect(`${placeOfFiles(form)}?done=file-undone`);
}

/** Brings back all that a file added. */
export async function redoFile(form: FormData): Promise<void> {
  await allowed("redoFile");
  const id = typed(form, "id");
  if (isId(id)) await setFileUndone(await scopeSeen(), id, false);
  redirect(`${placeOfFiles(form)}?done=file-redone`);
}
