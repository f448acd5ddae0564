/// <reference lib="dom" />
import { tonesAs } from "../drawing/index.js";

/**
 * The palette by the editor's theme, whose kind the editor tells by a class: the system may ask for
 * another. The page takes it as well as the picture.
 */
const THEMED = [
  tonesAs("light", "body"),
  tonesAs("light", "body.vscode-light .gaugelath"),
  tonesAs("dark", "body.vscode-dark,body.vscode-dark .gaugelath"),
];

let adopted: string | null = null;

/**
 * Takes the style element out of a drawing that is not in the page yet, and gives its rules to the
 * page as a style sheet of the script's: the page's content security policy allows no inline styles,
 * and looks only at elements. The rules are the same for every drawing, so they are read once.
 */
export function adoptStyles(drawing: SVGSVGElement): void {
  const style = drawing.querySelector("style");
  if (!style) return;
  style.remove();
  const rules = style.textContent;
  if (rules === adopted) return;
  adopted = rules;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`${rules}@media (forced-colors:none){${THEMED.join("")}}`);
  document.adoptedStyleSheets = [sheet];
}
