"use server";

import { revalidatePath } from "next/cache";
import { getTranslations } from "next-intl/server";
import { v7 } from "uuid";
import { takeIndexValues, valuesFated } from "../../../lib/data/index-values.ts";
import { addReferenceIndex, referenceIndex } from "../../../lib/data/reference-indices.ts";
import { day as dayField } from "../../../lib/entry-fields.ts";
import { faultsOf } from "../../../lib/fault.ts";
import { indexFile } from "../../../lib/indices/index-file.ts";
import { referenceIndexEntry } from "../../../lib/indices/reference-index-entry.ts";
import { seriesToTake } from "../../../lib/indices/series-to-take.ts";
import { indexLines } from "../../../lib/show/file-lines.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed } from "../../_forms/typed.ts";
import { heldBack } from "../../_gate/allowed.ts";
import { isId } from "../../_workspace/id-asked.ts";
import { scopeSeen, today } from "../../_workspace/workspace-seen.ts";
import { fileAnswer } from "../files/file-answer.ts";
import type { FileState } from "../files/file-state.ts";
import { orderTyped } from "../files/order-typed.ts";
import { fileReport, MOST_LINES } from "../files/report-words.ts";

/** A file of an index, known or new: looked at, or taken in with the day its values were published. */
export async function takeIndexForm(previous: FileState, form: FormData): Promise<FileState> {
  const held = await heldBack("takeIndexForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("settings.indices");
  const names = fieldNames({
    name: t("name"),
    series: t("series"),
    publisher: t("publisher"),
    base: t("base"),
    publishedOn: t("publishedOn"),
  });
  return fileAnswer(previous, form, names, async ({ name, text }, take) => {
    const scope = await scopeSeen();
    const asked = typed(form, "index");
    const there = isId(asked) ? await referenceIndex(scope, asked) : null;
    const wanted = there?.series ?? typed(form, "series") ?? null;
    const order = orderTyped(form);
    const found = indexFile(text, { series: null, order });
    const series = seriesToTake(found.series, wanted);
    if (found.shape !== "unknown" && series === null)
      return t("whichSeries", { wanted: wanted ?? "", found: found.series.slice(0, 12).join(", ") });
    const published = dayField().safeParse(typed(form, "publishedOn") ?? (await today()));
    if (!published.success)
      return faultsOf(published.error).map(({ code }) => ({ path: "publishedOn", code }));
    const entry = referenceIndexEntry.safeParse({
      name: typed(form, "name") ?? "",
      series: wanted ?? series ?? "",
      publisher: typed(form, "publisher") ?? found.publisher ?? "",
      base: typed(form, "base"),
    });
    if (there === null && !entry.success && found.shape !== "unknown") return faultsOf(entry.error);
    const { readings } = indexFile(text, { series, order });
    const file = {
      name,
      source: there?.publisher ?? (entry.success ? entry.data.publisher : name),
      publishedOn: published.data,
      readings,
    };
    const id = there?.id ?? v7();
    if (!take || found.shape === "unknown")
      return fileReport(indexLines(await valuesFated(scope, id, file), MOST_LINES), null);
    if (there === null && entry.success) {
      const made = await addReferenceIndex(scope, id, entry.data);
      if (!made.ok) return made.why === "faults" ? made.faults : t("thereAlready");
    }
    const { added, fates } = await takeIndexValues(scope, v7(), id, file);
    revalidatePath("/settings/indices");
    return fileReport(indexLines(fates, MOST_LINES), added);
  });
}
