import { registerWindow, SVG, type Svg } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import type { OverlayScene } from "./overlay/overlay-scene.js";
import type { Scene } from "./scene.js";
import { printElement, type PrintableElement } from "./print-element.js";
import { drawOverlay } from "./overlay/draw-overlay.js";
import { draw } from "./svg/draw.js";

/**
 * A scene as the text of an SVG file, drawn where there is no page. One element a line, so that a
 * small change of a plan is a small diff of its picture. Only this file knows svgdom: a webview
 * brings its own page.
 */
export function drawHeadless(scene: Scene): string {
  return withoutPage((root) => draw(scene, root));
}

/** An overlay of two plans as the text of an SVG file. */
export function drawOverlayHeadless(scene: OverlayScene): string {
  return withoutPage((root) => drawOverlay(scene, root));
}

function withoutPage(drawInto: (root: Svg) => void): string {
  const window = createSVGWindow();
  registerWindow(window, window.document);
  const root = SVG(window.document.documentElement as unknown as SVGSVGElement);
  drawInto(root);
  return printElement(root.node as unknown as PrintableElement);
}
