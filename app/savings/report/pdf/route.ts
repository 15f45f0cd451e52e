import { fileAnswer } from "../../_report/file-answer.ts";
import { pdfFile } from "../../_report/pdf-file.ts";

/** The report as a PDF to mail. */
export function GET(request: Request): Promise<Response> {
  return fileAnswer(request, {
    extension: "pdf",
    type: "application/pdf",
    make: ({ report, words }) => pdfFile(report, words),
  });
}
