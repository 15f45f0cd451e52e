"use server";

import { redirect } from "next/navigation";
import { nameIndexOfMaterial } from "../../../lib/data/reference-indices.ts";
import { typed } from "../../_forms/typed.ts";
import { allowed } from "../../_gate/allowed.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";

/** Names the index a material is held against, or, with none given, lets it name none. */
export async function nameMaterialIndex(form: FormData): Promise<void> {
  await allowed("nameMaterialIndex");
  const [material, index, page] = ["material", "index", "page"].map((name) => typed(form, name));
  if (isId(material)) await nameIndexOfMaterial(await scopeSeen(), material, isId(index) ? index : null);
  redirect(isId(page) ? `/settings/indices/${page}?done=index-named` : "/settings/indices");
}
