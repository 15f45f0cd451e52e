import { csvFile } from "../../_report/csv-file.ts";
import { fileAnswer } from "../../_report/file-answer.ts";

/** The report's rows as separated text, every digit exact. */
export function GET(request: Request): Promise<Response> {
  return fileAnswer(request, {
    extension: "csv",
    type: "text/csv; charset=utf-8",
    make: ({ flat }) => csvFile(flat),
  });
}
