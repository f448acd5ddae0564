/** What printing needs to know of an element; svgdom's and a page's both fit. */
export interface PrintableElement {
  readonly nodeName: string;
  readonly attributes: Iterable<{ readonly name: string; readonly value: string }>;
  readonly childNodes: Iterable<PrintableNode>;
}

/** A text says its data; an element has none. */
export type PrintableNode = PrintableElement & { readonly data?: string };

/**
 * An element as text, each element within on a line of its own, so that a small change of a picture
 * is a small diff of its file.
 */
export function printElement(element: PrintableElement): string {
  const lines: string[] = [];
  printInto(lines, element);
  lines.push("");
  return lines.join("\n");
}

function printInto(lines: string[], element: PrintableElement): void {
  let opening = `<${element.nodeName}`;
  for (const { name, value } of element.attributes) opening += ` ${name}="${escaped(value)}"`;
  const children = [...element.childNodes];
  if (children.length === 0) {
    lines.push(`${opening}/>`);
    return;
  }
  const closing = `</${element.nodeName}>`;
  if (children.every((child) => child.data !== undefined)) {
    lines.push(`${opening}>${children.map((child) => escaped(child.data!)).join("")}${closing}`);
    return;
  }
  lines.push(`${opening}>`);
  for (const child of children) printInto(lines, child);
  lines.push(closing);
}

const SPECIAL = /[&<>"]/;

/** Path data holds none of these, and is long: looked at once, then passed on. */
function escaped(text: string): string {
  if (!SPECIAL.test(text)) return text;
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
