import { drawForPaper, type PaperElement } from "../../drawing/headless.js";
import type { Mark, Sheet } from "./sheet.js";

const HAIRLINE = 0.2;

/** The print font by name, and what is found nearly everywhere. */
const FONTS = "Open Sans, DejaVu Sans, Helvetica, Arial, sans-serif";

/**
 * A sheet as the text of an SVG file, in its true size. Each text says how wide it is, so that it
 * takes the same room where another font is found. One element a line.
 */
export function svgOf({ title, width, height, marks }: Sheet): string {
  const size = `width="${num(width)}pt" height="${num(height)}pt" viewBox="0 0 ${num(width)} ${num(height)}"`;
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} font-family="${FONTS}">`,
    `<title>${escaped(title)}</title>`,
    `<path fill="#ffffff" d="M0 0H${num(width)}V${num(height)}H0z"/>`,
  ];
  for (const mark of marks) printMark(lines, mark);
  lines.push("</svg>", "");
  return lines.join("\n");
}

function printMark(lines: string[], mark: Mark): void {
  switch (mark.kind) {
    case "text": {
      const { x, y, width, size, weight, text } = mark;
      const bold = weight === "bold" ? ' font-weight="bold"' : "";
      const told = `x="${num(x)}" y="${num(y)}" font-size="${num(size)}"${bold} textLength="${num(width)}"`;
      lines.push(`<text ${told} lengthAdjust="spacingAndGlyphs">${escaped(text)}</text>`);
      return;
    }
    case "rule": {
      const dash =
        mark.dash.length > 0 ? ` stroke-dasharray="${mark.dash.map(num).join(" ")}"` : "";
      const style = `fill="none" stroke="#000000" stroke-width="${num(mark.weight)}"${dash}`;
      lines.push(`<polyline ${style} points="${mark.points.map(num).join(" ")}"/>`);
      return;
    }
    case "box": {
      const fill = mark.fill === null ? "none" : greyOf(mark.fill);
      const stroke =
        mark.outline === null ? "" : ` stroke="#000000" stroke-width="${num(mark.outline)}"`;
      const place = `x="${num(mark.left)}" y="${num(mark.top)}"`;
      const size = `width="${num(mark.width)}" height="${num(mark.height)}"`;
      lines.push(`<rect fill="${fill}"${stroke} ${place} ${size}/>`);
      return;
    }
    case "picture": {
      const { scene, left, top, scale } = mark;
      const { view } = scene;
      const moved = `translate(${num(left - view.left * scale)} ${num(top - view.top * scale)})`;
      lines.push(`<g transform="${moved} scale(${exact(scale)})">`);
      for (const child of drawForPaper(scene, HAIRLINE / scale).children)
        printElement(lines, child);
      lines.push("</g>");
      return;
    }
  }
}

function printElement(lines: string[], { name, attributes, text, children }: PaperElement): void {
  const told = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  const opening = `<${name}${told.join("")}`;
  if (text !== null) {
    lines.push(`${opening}>${escaped(text)}</${name}>`);
  } else if (children.length === 0) {
    lines.push(`${opening}/>`);
  } else {
    lines.push(`${opening}>`);
    for (const child of children) printElement(lines, child);
    lines.push(`</${name}>`);
  }
}

/** A length to the hundredth of a point: a printer's dots are coarser. */
function num(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

function exact(value: number): string {
  return String(Number(value.toPrecision(8)));
}

function greyOf(share: number): string {
  const part = Math.round(share * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${part}${part}${part}`;
}

function escaped(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
