"use server";

import { revalidatePath } from "next/cache";
import { getTranslations } from "next-intl/server";
import { v7 } from "uuid";
import { ratesFated, takeRates } from "../../../lib/data/rate-files.ts";
import { ratesFile } from "../../../lib/rates/rates-file.ts";
import { rateLines } from "../../../lib/show/file-lines.ts";
import { fieldNames } from "../../_forms/field-names.ts";
import { typed } from "../../_forms/typed.ts";
import { heldBack } from "../../_gate/allowed.ts";
import { scopeSeen } from "../../_workspace/workspace-seen.ts";
import { fileAnswer } from "../files/file-answer.ts";
import type { FileState } from "../files/file-state.ts";
import { orderTyped } from "../files/order-typed.ts";
import { fileReport, MOST_LINES } from "../files/report-words.ts";

/** A file of rates: looked at, or taken in. */
export async function takeRatesForm(previous: FileState, form: FormData): Promise<FileState> {
  const held = await heldBack("takeRatesForm", previous, form);
  if (held !== null) return held;
  const t = await getTranslations("settings.rates");
  const names = fieldNames({ source: t("source") });
  return fileAnswer(previous, form, names, async ({ name, text }, take) => {
    const codes = (typed(form, "currencies") ?? "").toUpperCase().match(/[A-Z]{3}/g);
    const [base, quote] = [typed(form, "base"), typed(form, "quote")];
    const read = ratesFile(text, {
      currencies: codes === null ? null : new Set(codes),
      pair: base === undefined || quote === undefined ? undefined : [base, quote],
      order: orderTyped(form),
    });
    const source = typed(form, "source") ?? read.source;
    if (source === null && read.shape !== "unknown") return [{ path: "source", code: "missing" }];
    const file = { name, source: (source ?? name).slice(0, 200), readings: read.readings };
    const scope = await scopeSeen();
    if (!take) return fileReport(rateLines(await ratesFated(scope, file), MOST_LINES), null);
    const { added, fates } = await takeRates(scope, v7(), file);
    revalidatePath("/settings/rates");
    return fileReport(rateLines(fates, MOST_LINES), added);
  });
}
