import { getTranslations } from "next-intl/server";
import type { FileLine, FileLines } from "../../../lib/show/file-lines.ts";
import type { FileReport } from "./file-state.ts";

/** How many lines of a file are shown. */
export const MOST_LINES = 60;

/** What a file comes to, in words. added: how many figures were taken in; null: it was only looked at. */
export async function fileReport(
  { counts, shown, left }: FileLines,
  added: number | null,
): Promise<FileReport> {
  const t = await getTranslations("settings.files");
  const faults = await getTranslations("faults");
  const reason = ({ skipped, refused, against }: FileLine) => {
    if (skipped !== null) return t(`skipped.${skipped}`);
    if (refused !== null) return faults(refused);
    return against === null ? "" : t("against", { value: against });
  };
  return {
    said: `${added === null ? t("looked") : t("taken", { added })} ${t("counts", counts)}`,
    columns: [
      { key: "row", label: t("row"), figures: true },
      { key: "column", label: t("column") },
      { key: "text", label: t("value"), figures: true },
      { key: "fate", label: t("fate") },
      { key: "why", label: t("why") },
    ],
    rows: shown.map((line) => ({
      key: line.key,
      cells: [String(line.row), line.column, line.text, t(`fates.${line.fate}`), reason(line)],
    })),
    more: left > 0 ? t("more", { left }) : null,
  };
}
