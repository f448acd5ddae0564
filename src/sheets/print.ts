/** The face for programs that print: it loads fonts, and writers of PDF and DXF. */
export type { FontFiles } from "./print/faces.js";
export type { LaidPaper } from "./print/lay-out.js";
export type { PaperSize } from "./print/paper-size.js";
export type { Sheet } from "./print/sheet.js";
export { dxfOf, DXF_LAYERS } from "./print/dxf.js";
export { Faces } from "./print/faces.js";
export { layOut } from "./print/lay-out.js";
export { pdfOf } from "./print/pdf.js";
export { svgOf } from "./print/svg.js";
