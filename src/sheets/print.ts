/** The face for programs that print: it loads fonts, and writers of PDF, DXF, CSV and Markdown. */
export type { PictureFile } from "./paper/markdown.js";
export type { FontFiles } from "./print/faces.js";
export type { LaidPaper } from "./print/lay-out.js";
export type { PaperSize } from "./print/paper-size.js";
export type { Sheet } from "./print/sheet.js";
export { cutsCsv } from "./csv/cuts-csv.js";
export { purchasesCsv } from "./csv/purchases-csv.js";
export { paperMarkdown } from "./paper/markdown.js";
export { dxfOf, DXF_LAYERS } from "./print/dxf.js";
export { Faces } from "./print/faces.js";
export { layOut } from "./print/lay-out.js";
export { pdfOf } from "./print/pdf.js";
export type { Rasterise, SheetFormat, SheetPart, SheetWork } from "./print/sheet-press.js";
export { SheetPress } from "./print/sheet-press.js";
export { svgOf } from "./print/svg.js";
