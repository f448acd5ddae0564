import { registerWindow, SVG, type Dom } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import { printElement, type PrintableElement } from "../../../src/drawing/print-element.js";

/** What a drawer draws into an empty group, printed: one element a line. */
export function drawn(draw: (into: Dom) => void): string {
  const window = createSVGWindow();
  registerWindow(window, window.document);
  const root = SVG(window.document.documentElement as unknown as SVGSVGElement);
  const group = root.group();
  draw(group);
  return printElement(group.node as unknown as PrintableElement);
}

/** The values of an attribute, in the order of the elements. */
export function valuesOf(svg: string, attribute: string): string[] {
  return [...svg.matchAll(new RegExp(` ${attribute}="([^"]*)"`, "g"))].map((match) => match[1]!);
}
