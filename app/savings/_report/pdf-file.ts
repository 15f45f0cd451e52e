import { pdfPicture } from "./pdf-picture.ts";
import { finished, INK, newSheet, SIZE, tape, write } from "./pdf-sheet.ts";
import { pdfTable } from "./pdf-table.ts";
import type { ReportWords, WordedReport } from "./worded.ts";

/** A report as a PDF to mail: real text with headings and tables that can be read aloud, the picture, page numbers. */
export function pdfFile(report: WordedReport, { t, locale }: ReportWords): Promise<Buffer> {
  const sheet = newSheet(report.title, locale);
  const { doc } = sheet;
  const text = (kind: "H2" | "P", words: string, muted = false) =>
    write(sheet, kind, words, {
      size: kind === "H2" ? SIZE.head : SIZE.text,
      strong: kind === "H2",
      ...(muted ? { colour: INK.muted } : {}),
    });
  write(sheet, "H1", report.title, { size: SIZE.title, strong: true });
  tape(doc);
  for (const sentence of report.headline)
    write(sheet, "P", sentence.join(""), { size: SIZE.head, strong: true });
  for (const sentence of report.about) text("P", sentence, true);
  doc.y += 6;
  text("H2", report.picture.title);
  text("P", report.picture.note, true);
  pdfPicture(sheet, report);
  text("H2", report.breakdown.title);
  pdfTable(sheet, report.breakdown);
  text("H2", report.sources.title);
  write(sheet, "P", report.firm.join(" "), { size: SIZE.table });
  doc.y += 4;
  text("H2", t("definitions"));
  for (const { term, text: meaning } of report.definitions)
    write(sheet, "P", `${term}: ${meaning}`, { size: SIZE.fine });
  for (const sentence of report.closing) write(sheet, "P", sentence, { size: SIZE.fine, colour: INK.muted });
  doc.addPage();
  for (const table of [...report.views, report.rows, report.books, report.sources]) {
    if (table === null) continue;
    text("H2", table.title);
    if (table.note !== null) text("P", table.note, true);
    pdfTable(sheet, table);
  }
  return finished(sheet, (page, of) => `${report.title}, ${t("pageOf", { page, of })}`);
}
