import { typed } from "../../_forms/typed.ts";

/** The screen whose files a form is about. */
export function placeOfFiles(form: FormData): string {
  return typed(form, "kind") === "index" ? "/settings/indices" : "/settings/rates";
}
