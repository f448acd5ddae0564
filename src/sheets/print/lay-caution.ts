import { type Flow, LEADING, SIZE } from "./flow.js";

const INSET = 9;
/** The sign's corner, its height and the room that it takes at the left. */
const SIGN = 15;
const SIGN_ROOM = SIGN + 10;
const BAR = 5;

/**
 * Cautions stand in a ruled box with a black bar and a triangle at its left, so that they are told
 * without colour. A box that is taller than the sheet goes on over the next.
 */
export function layCaution(flow: Flow, cautions: readonly string[]): void {
  const step = SIZE.text * LEADING;
  const wide = flow.width - BAR - 2 * INSET - SIGN_ROOM;
  let rest = cautions.flatMap((caution) => flow.wrap(caution, wide, SIZE.text, "bold"));
  flow.space(6);
  flow.need(Math.min(rest.length * step + 2 * INSET, flow.fullRoom));
  while (rest.length > 0) {
    const fit = Math.max(1, Math.floor((flow.room - 2 * INSET) / step));
    layBox(flow, rest.slice(0, fit));
    rest = rest.slice(fit);
    if (rest.length > 0) flow.begin();
  }
  flow.take(6);
}

function layBox(flow: Flow, lines: readonly string[]): void {
  const step = SIZE.text * LEADING;
  const height = Math.max(lines.length * step, SIGN) + 2 * INSET;
  const top = flow.take(height);
  const { left, width } = flow;
  flow.put(
    { kind: "box", left, top, width, height, fill: null, outline: 1.1 },
    { kind: "box", left, top, width: BAR, height, fill: 0, outline: null },
  );
  laySign(flow, left + BAR + INSET, top + INSET);
  lines.forEach((line, i) => {
    flow.line(line, left + BAR + INSET + SIGN_ROOM, top + INSET + i * step, SIZE.text, "bold");
  });
}

/** A triangle with a bang in it. */
function laySign(flow: Flow, left: number, top: number): void {
  const corners = [left, top + SIGN, left + SIGN / 2, top + 1, left + SIGN, top + SIGN];
  flow.put({
    kind: "rule",
    points: [...corners, left, top + SIGN, left + SIGN / 2, top + 1],
    weight: 1.3,
    dash: [],
  });
  const size = 10;
  const width = flow.faces.widthOf("!", size, "bold");
  flow.line("!", left + (SIGN - width) / 2, top + SIGN - 1.17 * size, size, "bold");
}
