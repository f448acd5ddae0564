import { type Flow, LEADING, SIZE } from "./flow.js";

/**
 * A heading is never the last thing on a sheet: this much has to fit under it, a table's caption, its
 * head and a row.
 */
const KEPT_WITH_HEADING = 96;

export function layHeading(flow: Flow, text: string): void {
  const lines = flow.wrap(text, flow.width, SIZE.heading, "bold");
  flow.space(10);
  flow.need(lines.length * SIZE.heading * LEADING + KEPT_WITH_HEADING);
  for (const line of lines) {
    flow.line(line, flow.left, flow.take(SIZE.heading * LEADING), SIZE.heading, "bold");
  }
  flow.take(2);
}

export function layText(flow: Flow, text: string): void {
  flow.space(3);
  layLines(flow, flow.wrap(text, flow.width, SIZE.text), flow.left);
  flow.take(3);
}

/** An item's first line has its number or its dot before it; the others stand under the first. */
export function layList(flow: Flow, items: readonly string[], numbered: boolean): void {
  const signs = items.map((_, i) => (numbered ? `${i + 1}.` : "•"));
  const indent = Math.max(...signs.map((sign) => flow.faces.widthOf(sign, SIZE.text)), 0) + 6;
  flow.space(3);
  items.forEach((item, i) => {
    const lines = flow.wrap(item, flow.width - indent, SIZE.text);
    flow.need(Math.min(lines.length, 2) * SIZE.text * LEADING);
    flow.line(signs[i]!, flow.left, flow.y, SIZE.text);
    layLines(flow, lines, flow.left + indent);
    flow.take(2);
  });
}

function layLines(flow: Flow, lines: readonly string[], left: number): void {
  for (const line of lines) {
    flow.need(SIZE.text * LEADING);
    flow.line(line, left, flow.take(SIZE.text * LEADING), SIZE.text);
  }
}
