import { fileText } from "../../../lib/files/file-text.ts";
import { MOST_BYTES } from "./file-state.ts";

/** A file as a form sent it: its name and its text; else why there is none. */
export type FileSent = Readonly<{ name: string; text: string }> | "missing" | "too-large";

/** The file of a form's field, read as text. */
export async function fileSent(form: FormData): Promise<FileSent> {
  const file = form.get("file");
  if (!(file instanceof File) || file.size === 0) return "missing";
  if (file.size > MOST_BYTES) return "too-large";
  return { name: file.name.slice(0, 200) || "–", text: fileText(new Uint8Array(await file.arrayBuffer())) };
}
