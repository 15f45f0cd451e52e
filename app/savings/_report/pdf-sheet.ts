import PDFDocument from "pdfkit";
import { plainLetters } from "./plain-letters.ts";

/** Sizes of type and of the sheet, in points. */
export const SIZE = {
  title: 20,
  head: 11.5,
  text: 9,
  table: 8,
  fine: 7.2,
  small: 6.6,
  margin: 44,
  foot: 18,
} as const;
export const INK = { ink: "#1b2430", muted: "#55606e", rule: "#d9d3c3", strong: "#8a8573" } as const;
const FONTS = { plain: "Helvetica", strong: "Helvetica-Bold" } as const;

export type Doc = PDFKit.PDFDocument;
export type Part = PDFKit.PDFStructureElement;
type Face = Readonly<{ size: number; strong?: boolean; colour?: string }>;

/** Where paper is Letter; everywhere else it is A4. */
const LETTER = /-(CA|US|MX|PH|CL|CO|VE)$/i;

/** An empty document with its outline for readers that read aloud. */
export function newSheet(title: string, locale: string): Readonly<{ doc: Doc; root: Part }> {
  const doc = new PDFDocument({
    size: LETTER.test(locale) ? "LETTER" : "A4",
    margins: { top: SIZE.margin, left: SIZE.margin, right: SIZE.margin, bottom: SIZE.margin + SIZE.foot },
    bufferPages: true,
    tagged: true,
    displayTitle: true,
    lang: locale,
    pdfVersion: "1.7",
    info: { Title: plainLetters(title) },
  });
  const root = doc.struct("Document");
  doc.addStructure(root);
  return { doc, root };
}

export function across(doc: Doc): number {
  return doc.page.width - 2 * SIZE.margin;
}

/** Begins a new page unless so much room is left. */
export function keepRoom(doc: Doc, height: number): boolean {
  if (doc.y + height <= doc.page.height - doc.page.margins.bottom) return false;
  doc.addPage();
  return true;
}

export function setFace(doc: Doc, { size, strong = false, colour = INK.ink }: Face): Doc {
  return doc
    .font(strong ? FONTS.strong : FONTS.plain)
    .fontSize(size)
    .fillColor(colour);
}

/** A heading or a paragraph, kept on one page. */
export function write(
  { doc, root }: Readonly<{ doc: Doc; root: Part }>,
  kind: "H1" | "H2" | "P",
  text: string,
  face: Face,
): void {
  const plain = plainLetters(text);
  const width = across(doc);
  setFace(doc, face);
  // A heading takes the beginning of what it heads along.
  keepRoom(doc, doc.heightOfString(plain, { width }) + (kind === "P" ? 0 : 5 * SIZE.text));
  root.add(
    doc.struct(kind, {}, () => {
      setFace(doc, face).text(plain, SIZE.margin, doc.y, { width });
    }),
  );
  doc.y += kind === "P" ? 2 : 3;
}

/** The measuring-tape edge of the house, for the eye only. */
export function tape(doc: Doc): void {
  const [left, right, y] = [SIZE.margin, doc.page.width - SIZE.margin, doc.y + 10];
  doc.markContent("Artifact", { type: "Layout" });
  doc.lineWidth(0.5).strokeColor(INK.strong).moveTo(left, y).lineTo(right, y);
  for (let x = left, tick = 0; x <= right; x += 3, tick += 1)
    doc.moveTo(x, y).lineTo(x, y - (tick % 16 === 0 ? 9 : tick % 4 === 0 ? 6 : 3));
  doc.stroke().endMarkedContent();
  doc.y = y + 10;
}

/** Writes under every page which one it is, and ends the document. */
export async function finished(
  { doc, root }: Readonly<{ doc: Doc; root: Part }>,
  footOf: (page: number, of: number) => string,
): Promise<Buffer> {
  root.end();
  const { start, count } = doc.bufferedPageRange();
  for (let page = 0; page < count; page += 1) {
    doc.switchToPage(start + page);
    doc.page.margins.bottom = 0;
    doc.markContent("Artifact", { type: "Pagination" });
    setFace(doc, { size: SIZE.small + 1, colour: INK.muted }).text(
      plainLetters(footOf(page + 1, count)),
      SIZE.margin,
      doc.page.height - SIZE.margin,
      { width: across(doc), align: "right", lineBreak: false },
    );
    doc.endMarkedContent();
  }
  const chunks: Buffer[] = [];
  const whole = new Promise<Buffer>((resolve, reject) => {
    doc.on("data", (chunk: Buffer) => chunks.push(chunk));
    doc.on("end", () => resolve(Buffer.concat(chunks)));
    doc.on("error", reject);
  });
  doc.end();
  return whole;
}
