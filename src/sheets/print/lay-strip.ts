import type { PoleMark } from "../paper/paper.js";
import { OVERLAP, type Strip } from "./cut-strips.js";
import { type Flow, LEADING } from "./flow.js";
import { spreadLabels } from "./spread-labels.js";

/** Where a strip stands on its sheet. */
export interface StripPlace {
  readonly left: number;
  readonly bottom: number;
  readonly width: number;
}

/** How far a mark reaches from the pole's edge, and how heavy it is. */
const TICK: Readonly<
  Record<PoleMark["weight"], { readonly reach: number; readonly weight: number }>
> = {
  course: { reach: 16, weight: 0.8 },
  opening: { reach: 24, weight: 1.2 },
  datum: { reach: 30, weight: 1.8 },
};
const LABELS_AT = 44;
const LARGEST = 8.5;
/** Under this size nothing can be read; marks that are closer than this overlap. */
const SMALLEST = 4;

const CUT = [4, 3];

/** One strip: the pole's edge at its left, its marks, their words, and crosses where strips overlap. */
export function layStrip(flow: Flow, strip: Strip, place: StripPlace): void {
  const { left, bottom, width } = place;
  const top = bottom - strip.length;
  const right = left + width;
  flow.put(
    { kind: "rule", points: [left, top, left, bottom], weight: 1.2, dash: [] },
    {
      kind: "rule",
      points: [left, top, right, top, right, bottom, left, bottom],
      weight: 0.5,
      dash: CUT,
    },
  );
  layOverlaps(flow, strip, place);
  for (const { up, mark } of strip.marks) {
    const { reach, weight } = TICK[mark.weight];
    const y = bottom - up;
    flow.put({ kind: "rule", points: [left, y, left + reach, y], weight, dash: [] });
  }
  layLabels(flow, strip, place);
}

/** A cross in the middle of each overlap; the same cross on both strips comes to lie on itself. */
function layOverlaps(flow: Flow, strip: Strip, { left, bottom, width }: StripPlace): void {
  const x = left + width - 16;
  const arm = 7;
  const layCross = (y: number, told: string): void => {
    flow.put(
      { kind: "rule", points: [x - arm, y, x + arm, y], weight: 0.6, dash: [] },
      { kind: "rule", points: [x, y - arm, x, y + arm], weight: 0.6, dash: [] },
    );
    flow.line(told, x + arm - flow.faces.widthOf(told, 6.5), y + arm, 6.5);
  };
  if (strip.number < strip.of) {
    const y = bottom - strip.length + OVERLAP / 2;
    layCross(y, `under strip ${strip.number + 1}`);
  }
  if (strip.number > 1) layCross(bottom - OVERLAP / 2, `strip ${strip.number} of ${strip.of}`);
  else if (strip.of > 1) flow.line(`strip 1 of ${strip.of}`, x + arm - 34, bottom - 11, 6.5);
}

/** Where labels may stand, from the top: off the crosses and the strip's number at its ends. */
function labelRoom({ number, of, length }: Strip): readonly [number, number] {
  const foot = number > 1 ? OVERLAP + 4 : of > 1 ? 14 : 0;
  return [number < of ? OVERLAP + 4 : 0, length - foot];
}

/** Words of all marks, from the top, apart from each other; a thin line leads from mark to words. */
function layLabels(flow: Flow, strip: Strip, { left, bottom, width }: StripPlace): void {
  if (strip.marks.length === 0) return;
  const marks = [...strip.marks].reverse();
  const [first, last] = labelRoom(strip);
  const room = width - LABELS_AT - 4;
  const size = Math.max(SMALLEST, Math.min(LARGEST, (last - first) / (marks.length * LEADING)));
  const labels = marks.map(({ up, mark }) => {
    const weight = mark.weight === "course" ? "regular" : "bold";
    const lines = flow.wrap(`${mark.reading}  ${mark.what}`, room, size, weight);
    return {
      lines,
      weight,
      middle: strip.length - up - first,
      height: lines.length * size * LEADING,
    } as const;
  });
  const places = spreadLabels(labels, last - first);
  labels.forEach(({ lines, weight, middle, height }, i) => {
    const y = bottom - strip.length + first + middle;
    const at = bottom - strip.length + first + places[i]!;
    const reach = TICK[marks[i]!.mark.weight].reach;
    const points = [left + reach, y, left + LABELS_AT - 3, at];
    flow.put({ kind: "rule", points, weight: 0.3, dash: [] });
    lines.forEach((line, n) => {
      flow.line(line, left + LABELS_AT, at - height / 2 + n * size * LEADING, size, weight);
    });
  });
}
