import type { SavingsDrawing } from "../../../lib/show/savings-drawing.ts";
import { across, type Doc, INK, keepRoom, type Part, SIZE, setFace } from "./pdf-sheet.ts";
import { plainLetters } from "./plain-letters.ts";
import type { LegendLine, WordedReport } from "./worded.ts";

/** The look's series on paper. */
const SERIES = { saved: "#009e73", lost: "#d55e00", net: INK.ink, held: "#0072b2" } as const;
const HATCH = 6;

function hatched(doc: Doc, { box, lost }: SavingsDrawing): void {
  doc.save().path(lost).clip().lineWidth(1).strokeColor(SERIES.lost);
  for (let x = box.left - box.height; x < box.width; x += HATCH)
    doc.moveTo(x, box.height).lineTo(x + box.height, 0);
  doc.stroke().restore();
}

/** The places of `savingsDrawing`, in its own units. */
function lines(doc: Doc, drawing: SavingsDrawing): void {
  const { box, grid, months, zero, saved, lost, net, held, marks, end } = drawing;
  const right = box.width - box.right;
  doc.lineWidth(1).strokeColor(INK.rule);
  for (const { y } of grid) doc.moveTo(box.left, Number(y)).lineTo(right, Number(y));
  for (const { x } of months)
    doc.moveTo(Number(x), box.height - box.bottom).lineTo(Number(x), box.height - box.bottom + 5);
  doc.stroke();
  doc.save().path(saved).fillOpacity(0.2).fill(SERIES.saved).restore();
  doc.path(saved).lineWidth(1).stroke(SERIES.saved);
  hatched(doc, drawing);
  doc.path(lost).lineWidth(1).stroke(SERIES.lost);
  doc.moveTo(box.left, Number(zero)).lineTo(right, Number(zero)).lineWidth(1.5).stroke(INK.strong);
  if (held !== "") doc.save().path(held).lineWidth(2).dash(5, { space: 4 }).stroke(SERIES.held).restore();
  for (const { x, y } of marks)
    doc.circle(Number(x), Number(y), 3).lineWidth(2).fillAndStroke("#ffffff", SERIES.held);
  doc.path(net).lineWidth(2.5).stroke(SERIES.net);
  doc.circle(Number(end.x), Number(end.y), 4).fill(SERIES.net);
  setFace(doc, { size: 14, colour: INK.muted });
  for (const { y, label } of grid)
    doc.text(plainLetters(label), 0, Number(y) - 4, {
      width: box.left - 8,
      align: "right",
      lineBreak: false,
    });
  for (const { x, label } of months)
    doc.text(plainLetters(label), Number(x) - 40, box.height - 18, {
      width: 80,
      align: "center",
      lineBreak: false,
    });
}

/** The picture of a report, with what each line is and where it stands. */
export function pdfPicture(
  { doc, root }: Readonly<{ doc: Doc; root: Part }>,
  { picture, drawings }: Pick<WordedReport, "picture" | "drawings">,
): void {
  if (drawings === null) return;
  const { wide } = drawings;
  const scale = (across(doc) * SHARE) / wide.box.width;
  const height = wide.box.height * scale;
  keepRoom(doc, height);
  const top = doc.y;
  const figure = doc.struct("Figure", { alt: plainLetters(picture.text) }, () => {
    doc.save().translate(SIZE.margin, top).scale(scale);
    lines(doc, wide);
    doc.restore();
  });
  root.add(figure);
  doc.y = top + 4;
  for (const line of picture.legend) legendLine(doc, root, line, SIZE.margin + across(doc) * SHARE + GAP);
  doc.y = top + height + 8;
}

/** What of the width is the picture's; the rest is its legend's. */
const SHARE = 0.66;
const GAP = 14;
const SWATCH = 18;

function legendLine(doc: Doc, root: Part, { series, label, figure }: LegendLine, left: number): void {
  const y = doc.y;
  const text = left + SWATCH + 6;
  root.add(
    doc.struct("P", {}, () => {
      setFace(doc, { size: SIZE.table, strong: true }).text(plainLetters(figure ?? ""), text, y);
      const width = SIZE.margin + across(doc) - text;
      setFace(doc, { size: SIZE.table, colour: INK.muted }).text(plainLetters(label), text, doc.y, { width });
    }),
  );
  const below = doc.y + 6;
  doc.markContent("Artifact", { type: "Layout" });
  if (series === "saved" || series === "lost") {
    doc.rect(left, y, SWATCH, 8).lineWidth(1).stroke(SERIES[series]);
    if (series === "saved") doc.save().rect(left, y, SWATCH, 8).fillOpacity(0.2).fill(SERIES.saved).restore();
    else {
      for (const x of [0, 6, 12]) doc.moveTo(left + x, y + 8).lineTo(left + x + 6, y);
      doc.stroke(SERIES.lost);
    }
  } else {
    doc
      .save()
      .moveTo(left, y + 4)
      .lineTo(left + SWATCH, y + 4)
      .lineWidth(2);
    if (series === "held") doc.dash(4, { space: 3 });
    doc.stroke(SERIES[series]).restore();
  }
  doc.endMarkedContent();
  doc.y = below;
}
