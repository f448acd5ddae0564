import type { Pole } from "../paper/paper.js";
import { cutStrips, MOST_STRIPS } from "./cut-strips.js";
import { type Flow, LEADING, SIZE } from "./flow.js";
import { layStrip } from "./lay-strip.js";
import { layText } from "./lay-text.js";
import { POINTS_PER_INCH, POINTS_PER_MM } from "./paper-size.js";

const STRIPS_A_SHEET = 3;
const GAP = 14;

/** A pole that would have less of a sheet than this begins on the next. */
const ENOUGH = 0.7;

const HOW = {
  up: "The foot of strip 1 is the pole's lower end.",
  across: "The foot of strip 1 is the pole's left end: turn it a quarter turn clockwise to use it.",
} as const;

/**
 * A story pole in its true size: three strips a sheet, beside a check that the printer kept the size.
 * It begins near the top of a sheet, so that its strips are long.
 */
export function layPole(flow: Flow, pole: Pole): void {
  if (flow.room < ENOUGH * flow.fullRoom) flow.begin();
  const told =
    "Print at 100 % (actual size, no fitting to the page), and measure both bars before use. Cut along " +
    "the dashed lines, lay each next strip over the end of the one before, cross on cross, and tape it.";
  layText(flow, `${pole.caption}\n${told} ${HOW[pole.direction]}`);
  layScaleCheck(flow);
  const strips = cutStrips(pole, flow.room - 4);
  if (strips.length === 0) {
    layText(
      flow,
      `The pole is too long to print in true size: it would take over ${MOST_STRIPS} strips.`,
    );
  }
  const wide = (flow.width - (STRIPS_A_SHEET - 1) * GAP) / STRIPS_A_SHEET;
  for (let first = 0; first < strips.length; first += STRIPS_A_SHEET) {
    if (first > 0) {
      flow.begin();
      layScaleCheck(flow);
    }
    const bottom = flow.take(flow.room) + Math.max(...strips.map(({ length }) => length));
    strips.slice(first, first + STRIPS_A_SHEET).forEach((strip, i) => {
      layStrip(flow, strip, { left: flow.left + i * (wide + GAP), bottom, width: wide });
    });
  }
}

/** Two bars of stated length: whoever prints at another size sees it with any rule. */
function layScaleCheck(flow: Flow): void {
  const top = flow.take(26) + 6;
  const gap = 24;
  layBar(flow, flow.left, top, { length: 4 * POINTS_PER_INCH, parts: 4, told: "4 in" });
  const left = flow.left + 4 * POINTS_PER_INCH + gap;
  // What is left of a sheet is less than 100 mm.
  layBar(flow, left, top, { length: 50 * POINTS_PER_MM, parts: 5, told: "50 mm" });
}

interface Bar {
  readonly length: number;
  readonly parts: number;
  readonly told: string;
}

function layBar(flow: Flow, left: number, top: number, { length, parts, told }: Bar): void {
  const size = SIZE.small;
  const right = left + length;
  flow.put({ kind: "rule", points: [left, top, right, top], weight: 1, dash: [] });
  for (let i = 0; i <= parts; i++) {
    const x = left + (length * i) / parts;
    const down = i === 0 || i === parts ? 6 : 3.5;
    flow.put({ kind: "rule", points: [x, top - down, x, top + down], weight: 0.7, dash: [] });
  }
  const text = `This bar is ${told} long.`;
  const width = flow.faces.widthOf(text, size);
  flow.line(text, left + (length - width) / 2, top + 5, size * Math.min(1, LEADING));
}
