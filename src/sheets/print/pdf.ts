import PDFDocument from "pdfkit";
import { drawForPaper } from "../../drawing/headless.js";
import type { Faces } from "./faces.js";
import type { LaidPaper } from "./lay-out.js";
import { drawPdfPicture } from "./pdf-picture.js";
import type { Mark, PictureMark, Sheet } from "./sheet.js";

/** Around each piece of tile in a picture, in points. */
const HAIRLINE = 0.2;

/**
 * A laid paper as a PDF file (ISO 32000): lines and letters, the print font embedded as far as it is
 * used, with an outline of its pages. The same paper gives the same bytes: nothing in it tells of the
 * hour or of chance. `progress` hears of each sheet that is done.
 */
export async function pdfOf(
  paper: LaidPaper,
  faces: Faces,
  progress: (done: number) => void = () => undefined,
): Promise<Uint8Array> {
  const pdf = openPdf(paper, faces);
  const parts: Uint8Array[] = [];
  const whole = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on("data", (part: Uint8Array) => parts.push(part));
    pdf.on("end", () => resolve(joined(parts)));
    pdf.on("error", reject);
  });
  for (const [i, sheet] of paper.sheets.entries()) {
    drawSheet(pdf, sheet, faces);
    progress(i + 1);
  }
  pdf.end();
  return whole;
}

/**
 * Without the second copy of the title and the date that pdfkit writes as XMP: it needs a date, and
 * takes a title with `&` in it for markup. What the file says of itself stands in its information
 * dictionary alone.
 */
class SheetPdf extends PDFDocument {
  override endMetadata(): void {
    // Nothing is to be written.
  }
}

function openPdf({ title, revision }: LaidPaper, faces: Faces): PDFKit.PDFDocument {
  const pdf = new SheetPdf({
    autoFirstPage: false,
    // No font but the two that are registered below.
    font: "",
    pdfVersion: "1.7",
    lang: "en-US",
    displayTitle: true,
    info: {
      Title: title,
      Subject: "Setting out, cuts and purchases of tiled walls",
      ...(revision === null ? {} : { Keywords: `revision ${revision}` }),
      Creator: "Gaugelath",
      // The file's id is worked out from this; the date itself is taken out again below.
      CreationDate: new Date(0),
    },
  });
  delete pdf.info.CreationDate;
  for (const weight of ["regular", "bold"] as const) {
    // It takes a font of fontkit's as well as a file; its types know of files alone.
    pdf.registerFont(weight, faces.fontFor(weight) as unknown as string);
  }
  return pdf;
}

function drawSheet(pdf: PDFKit.PDFDocument, sheet: Sheet, faces: Faces): void {
  pdf.addPage({ size: [sheet.width, sheet.height], margin: 0 });
  if (sheet.part === 1) pdf.outline.addItem(sheet.title);
  for (const mark of sheet.marks) drawMark(pdf, mark, faces);
}

/** A page begins in black (ISO 32000-1, 8.4.1): what draws in another colour leaves it black again. */
function drawMark(pdf: PDFKit.PDFDocument, mark: Mark, faces: Faces): void {
  switch (mark.kind) {
    case "text":
      pdf.font(mark.weight).fontSize(mark.size);
      pdf.text(mark.text, mark.x, mark.y, { lineBreak: false, baseline: "alphabetic" });
      return;
    case "rule": {
      pdf.lineWidth(mark.weight).lineJoin("miter");
      if (mark.dash.length > 0) pdf.dash(mark.dash as unknown as number, {});
      else pdf.undash();
      const [x = 0, y = 0] = mark.points;
      pdf.moveTo(x, y);
      for (let i = 2; i < mark.points.length; i += 2)
        pdf.lineTo(mark.points[i]!, mark.points[i + 1]!);
      pdf.stroke();
      return;
    }
    case "box":
      if (mark.fill !== null) {
        const grey = Math.round(mark.fill * 255);
        pdf.save().rect(mark.left, mark.top, mark.width, mark.height);
        pdf.fill([grey, grey, grey]).restore();
      }
      if (mark.outline !== null) {
        pdf.undash().lineWidth(mark.outline);
        pdf.rect(mark.left, mark.top, mark.width, mark.height).stroke();
      }
      return;
    case "picture": {
      drawPicture(pdf, mark, faces);
      return;
    }
  }
}

function drawPicture(pdf: PDFKit.PDFDocument, mark: PictureMark, faces: Faces): void {
  const { scene, left, top, scale } = mark;
  const { view } = scene;
  pdf.save();
  pdf.translate(left, top).scale(scale).translate(-view.left, -view.top);
  drawPdfPicture(pdf, drawForPaper(scene, HAIRLINE / scale), faces);
  pdf.restore();
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
