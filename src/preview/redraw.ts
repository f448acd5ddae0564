/// <reference lib="dom" />
import { SVG, type Svg } from "@svgdotjs/svg.js";
import { adoptStyles } from "./adopt-styles.js";
import { patchElement } from "./patch-element.js";

/**
 * A picture in the place of the one before: drawn apart from the page, then what changed is put into
 * the old one, which is given back. The first is given back as it was drawn, not yet in the page.
 */
export function redraw(old: SVGSVGElement | null, drawInto: (svg: Svg) => void): SVGSVGElement {
  const svg = SVG();
  drawInto(svg);
  const { node } = svg;
  adoptStyles(node);
  node.classList.add("picture");
  if (!old) return node;
  patchElement(old, node);
  return old;
}
