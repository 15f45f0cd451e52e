import { getTranslations } from "next-intl/server";
import type { Fault } from "../../../lib/fault.ts";
import { isElsewhere } from "../../_forms/answer.ts";
import { isDatabaseDown } from "../../_forms/database-down.ts";
import { type FieldNames, faultWords } from "../../_forms/fault-words.ts";
import { valuesOf } from "../../_forms/values-of.ts";
import { type FileSent, fileSent } from "./file-sent.ts";
import type { FileReport, FileState } from "./file-state.ts";

type Sent = Exclude<FileSent, string>;

/**
 * What every action of a form with a file answers: the file's report, looked at or taken in; else what is wrong with the
 * form, with all that was typed; a text is one sentence about all of it.
 */
export async function fileAnswer(
  previous: FileState,
  form: FormData,
  names: FieldNames,
  work: (file: Sent, take: boolean) => Promise<FileReport | readonly Fault[] | string>,
): Promise<FileState> {
  const t = await getTranslations("settings.files");
  const ui = await getTranslations("ui");
  const values = valuesOf(form);
  const state = (rest: Partial<FileState>): FileState => ({
    values,
    faults: [],
    trouble: null,
    attempt: previous.attempt + 1,
    ...rest,
  });
  if (await isElsewhere(form)) return state({ trouble: ui("otherPlace") });
  const file = await fileSent(form);
  if (file === "missing") return state({ trouble: t("noFile") });
  if (file === "too-large") return state({ trouble: t("tooBig") });
  try {
    const came = await work(file, form.get("step") === "take");
    if (typeof came === "string") return state({ trouble: came });
    return "said" in came ? state({ report: came }) : state({ faults: await faultWords(came, names) });
  } catch (error) {
    if (isDatabaseDown(error)) return state({ trouble: ui("databaseDown") });
    throw error;
  }
}
