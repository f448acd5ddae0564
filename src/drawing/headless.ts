import { registerWindow, SVG, type Svg } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import type { OverlayScene } from "./overlay/overlay-scene.js";
import type { Scene } from "./scene.js";
import { type PaperElement, paperElement } from "./paper-element.js";
import { printElement, type PrintableElement } from "./print-element.js";
import { drawOverlay } from "./overlay/draw-overlay.js";
import { draw } from "./svg/draw.js";

export type { PaperElement } from "./paper-element.js";

/**
 * A scene as the text of an SVG file, drawn where there is no page. One element a line, so that a
 * small change of a plan is a small diff of its picture. Only this file knows svgdom: a webview
 * brings its own page.
 */
export function drawHeadless(scene: Scene): string {
  return printElement(withoutPage((root) => draw(scene, root)));
}

/**
 * A scene as it is printed on paper, in black and white, for programs that write other files than
 * SVG. `hairline` is the width of the finest line, in millimetres of wall.
 */
export function drawForPaper(scene: Scene, hairline: number): PaperElement {
  return paperElement(
    withoutPage((root) => draw(scene, root)),
    hairline,
  );
}

/** An overlay of two plans as the text of an SVG file. */
export function drawOverlayHeadless(scene: OverlayScene): string {
  return printElement(withoutPage((root) => drawOverlay(scene, root)));
}

function withoutPage(drawInto: (root: Svg) => void): PrintableElement {
  const window = createSVGWindow();
  registerWindow(window, window.document);
  const root = SVG(window.document.documentElement as unknown as SVGSVGElement);
  drawInto(root);
  return root.node as unknown as PrintableElement;
}
