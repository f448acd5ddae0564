// The types of a page, in which svg.js speaks; a page itself is never asked for anything.
/// <reference lib="dom" />
import type { Container, Dom } from "@svgdotjs/svg.js";
import type { PictureBox, Points } from "../scene.js";
import { rounded } from "../picture.js";

/** Attributes in the order in which they are printed. */
export type Attributes = Readonly<Record<string, string | number>>;

/**
 * An element of any name. Plain elements are used throughout: svg.js's own text and shapes ask the
 * page for fonts and boxes, and a picture must come out the same where there is no page.
 */
export function add(into: Container | Dom, name: string, attributes: Attributes = {}): Dom {
  const element = (into as Container).element(name);
  // Past svg.js's attr(), which rewrites numbers and colours: what is written here stays as it is.
  for (const [key, value] of Object.entries(attributes)) {
    element.node.setAttribute(key, typeof value === "number" ? String(rounded(value)) : value);
  }
  return element;
}

/** An element that holds a text. */
export function addText(
  into: Container | Dom,
  name: string,
  text: string,
  attributes: Attributes = {},
): Dom {
  return add(into, name, attributes).words(text);
}

/** Path data of a closed ring. */
export function ringPath(points: Points): string {
  return `${linePath(points)}z`;
}

/** Path data of an open line. */
export function linePath(points: Points): string {
  let d = `M${points[0]!} ${points[1]!}`;
  for (let i = 2; i < points.length; i += 2) {
    const x = points[i]!;
    const y = points[i + 1]!;
    if (y === points[i - 1]) d += `H${x}`;
    else if (x === points[i - 2]) d += `V${y}`;
    else d += `L${x} ${y}`;
  }
  return d;
}

export function boxPath({ left, top, right, bottom }: PictureBox): string {
  return `M${left} ${bottom}H${right}V${top}H${left}z`;
}
