import type { PaperElement } from "../../drawing/headless.js";
import type { Faces } from "./faces.js";
import type { Weight } from "./sheet.js";

/** What an element hands on to those within it. */
type Paints = Readonly<Record<string, string>>;

const HANDED_ON = [
  "fill",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "fill-rule",
  "fill-opacity",
  "paint-order",
  "font-size",
  "font-weight",
  "text-anchor",
] as const;

const AT_FIRST: Paints = { fill: "#000000", stroke: "none", "stroke-width": "1" };

/** How far a halo reaches round a line's letters, from its baseline and its ends, in sizes. */
const HALO = { over: 0.78, under: 0.2, beside: 0.1 } as const;

/**
 * Draws a picture's elements into a PDF whose unit is already the picture's. It knows what our
 * pictures are made of (groups, paths, circles, lines of text) and throws at anything else, so that
 * nothing of a picture is left out unseen.
 */
export function drawPdfPicture(pdf: PDFKit.PDFDocument, root: PaperElement, faces: Faces): void {
  new PdfPicture(pdf, faces).draw(root, AT_FIRST);
}

class PdfPicture {
  constructor(
    private readonly pdf: PDFKit.PDFDocument,
    private readonly faces: Faces,
  ) {}

  draw(element: PaperElement, from: Paints): void {
    const { name, attributes } = element;
    const paints = handedOn(from, attributes);
    const { transform } = attributes;
    if (transform !== undefined) {
      this.pdf.save();
      this.#move(transform);
    }
    if (name === "path") this.#drawPath(attributes.d ?? "", paints);
    else if (name === "circle") this.#drawCircle(attributes, paints);
    else if (name === "text") this.#drawText(element, paints);
    else if (name !== "g" && name !== "svg") throw new Error(`A picture holds <${name}>`);
    for (const child of element.children) this.draw(child, paints);
    if (transform !== undefined) this.pdf.restore();
  }

  /** `translate(x y)` and `rotate(a)`, one after the other. */
  #move(transform: string): void {
    for (const [, word, numbers] of transform.matchAll(/(\w+)\(([^)]*)\)/g)) {
      const [first = 0, second = 0] = numbers!.trim().split(/[ ,]+/).map(Number);
      if (word === "translate") this.pdf.translate(first, second);
      else if (word === "rotate") this.pdf.rotate(first);
      else throw new Error(`A picture is moved by ${word}`);
    }
  }

  #drawPath(d: string, paints: Paints): void {
    if (d === "") return;
    this.#paint(paints, () => this.pdf.path(d));
  }

  #drawCircle(attributes: Paints, paints: Paints): void {
    const [x, y, radius] = [attributes.cx, attributes.cy, attributes.r].map(Number);
    this.#paint(paints, () => this.pdf.circle(x!, y!, radius!));
  }

  #paint(paints: Paints, outline: () => void): void {
    const fills = paints.fill !== "none";
    const strokes = paints.stroke !== "none";
    if (!fills && !strokes) return;
    const { pdf } = this;
    const rule = paints["fill-rule"] === "evenodd" ? "even-odd" : "non-zero";
    if (strokes) this.#setStroke(paints);
    if (fills) pdf.fillColor(paints.fill!, Number(paints["fill-opacity"] ?? 1));
    outline();
    if (fills && strokes) pdf.fillAndStroke(undefined, undefined, rule);
    else if (fills) pdf.fill(undefined, rule);
    else pdf.stroke();
  }

  #setStroke(paints: Paints): void {
    const { pdf } = this;
    pdf.lineWidth(Number(paints["stroke-width"])).strokeColor(paints.stroke!, 1);
    pdf.lineJoin(paints["stroke-linejoin"] === "round" ? "round" : "miter");
    const dashes = paints["stroke-dasharray"]?.split(/[ ,]+/).map(Number);
    if (dashes) pdf.dash(dashes as unknown as number, {});
    else pdf.undash();
  }

  /** The halo is a box, not a text in outline: a reader that searches finds each text once. */
  #drawText({ text, attributes }: PaperElement, paints: Paints): void {
    if (text === null) return;
    const { pdf, faces } = this;
    const printable = faces.printable(text);
    const size = Number(paints["font-size"]);
    const weight: Weight = paints["font-weight"] === "bold" ? "bold" : "regular";
    const width = faces.widthOf(printable, size, weight);
    const share = { start: 0, middle: 0.5, end: 1 }[paints["text-anchor"] ?? "start"] ?? 0;
    const x = Number(attributes.x ?? 0) - share * width;
    const y = Number(attributes.y ?? 0);
    if (paints.stroke !== "none") this.#drawHalo(x, y, width, size, paints.stroke!);
    pdf.fillColor(paints.fill!, 1).font(weight).fontSize(size);
    pdf.text(printable, x, y, { lineBreak: false, baseline: "alphabetic" });
  }

  #drawHalo(x: number, y: number, width: number, size: number, colour: string): void {
    const { over, under, beside } = HALO;
    this.pdf.rect(
      x - beside * size,
      y - over * size,
      width + 2 * beside * size,
      (over + under) * size,
    );
    this.pdf.fill(colour);
  }
}

function handedOn(from: Paints, own: Paints): Paints {
  const paints: Record<string, string> = { ...from };
  for (const name of HANDED_ON) {
    const value = own[name];
    if (value !== undefined) paints[name] = value;
  }
  return paints;
}
