import { fileAnswer } from "../../_report/file-answer.ts";
import { xlsxFile } from "../../_report/xlsx-file.ts";

/** The report as a spreadsheet: numbers as numbers, days as days. */
export function GET(request: Request): Promise<Response> {
  return fileAnswer(request, {
    extension: "xlsx",
    type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    make: ({ report, flat, words }) => xlsxFile(report, flat, words),
  });
}
