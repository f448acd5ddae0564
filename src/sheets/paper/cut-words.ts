import { plateWords } from "../plate-words.js";
import { plainText } from "../../drawing/index.js";
import type { Nm } from "../../measure/index.js";
import type { Side } from "../../model/index.js";
import type { Batch, DrilledHole, Fence, Mitre, Notch, Taper } from "../../takeoff/index.js";
import { sidesWords } from "./words.js";

type Print = (nm: Nm) => string;

export const KIND_WORDS: Readonly<Record<Batch["cut"]["kind"], string>> = {
  rip: "rip",
  crosscut: "crosscut",
  corner: "rip and crosscut",
  taper: "taper",
  notch: "notch",
  hole: "hole",
  mitre: "mitre",
};

/** How one piece of a batch is cut, a sentence a cut; every size from an edge that is named. */
export function cutSteps(batch: Batch, both: Print): string[] {
  const { fences, tapers, notches, holes, mitres } = batch.cut;
  return [
    ...fences.map((fence) => fenceWords(fence, batch, both)),
    ...tapers.map((taper) => taperWords(taper, batch, both)),
    ...notches.map((notch) => notchWords(notch, batch, both)),
    ...holes.map((hole) => holeWords(hole, both)),
    ...mitres.map((mitre) => mitreWords(mitre, both)),
  ];
}

function fenceWords({ along, from, keep }: Fence, batch: Batch, both: Print): string {
  const what = along === "across" ? "width" : "height";
  return `fence at ${both(keep)}: keep that ${what} from the ${edge(from, batch)}`;
}

function taperWords(taper: Taper, { cut: { box } }: Batch, both: Print): string {
  const { side, from, to, first, last } = taper;
  const level = side === "bottom" || side === "top";
  const [one, other] = level ? ["left", "right"] : ["bottom", "top"];
  const what = level ? "high" : "wide";
  const whole = to - from === (level ? box.right - box.left : box.top - box.bottom);
  const [begin, end] = whole
    ? [`the ${one}`, `the ${other}`]
    : [both(from), `${both(to)} from its ${one}`];
  if (first === last) {
    // What a riser takes beside a slope that comes down to nothing, or a bend of a side that goes on level: no taper.
    return `straight cut along the ${side}: ${both(first)} ${what} between ${both(from)} and ${both(to)} from its ${one}`;
  }
  return `taper along the ${side}: ${both(first)} ${what} at ${begin}, ${both(last)} at ${end}`;
}

/** Its size, and where it begins from the edges of the piece that it leaves. */
function notchWords({ opens, box }: Notch, batch: Batch, both: Print): string {
  const where = opens.length === 0 ? "inside" : `open to the ${sidesWords(opens)}`;
  const size = `${both(box.right - box.left)} across x ${both(box.top - box.bottom)} up`;
  const from = [reference("left", "right", opens, batch), reference("bottom", "top", opens, batch)];
  const begins = from.map((side) => {
    const distance = side === "left" || side === "bottom";
    const at = distance ? box[side] - originOf(side, batch) : originOf(side, batch) - box[side];
    return `${both(at)} from the ${edge(side, batch)}`;
  });
  return `notch, ${where}: ${size}; it begins ${begins.join(" and ")}`;
}

/** The edge to measure from: never one that the notch opens on, a factory edge where there is one. */
function reference(low: Side, high: Side, opens: readonly Side[], { keeps }: Batch): Side {
  if (opens.includes(low)) return high;
  if (opens.includes(high)) return low;
  return !keeps.includes(low) && keeps.includes(high) ? high : low;
}

/** Where that edge lies in the tile: the tile's own where it stays, else where it is cut. */
function originOf(side: Side, { keeps, tile, cut }: Batch): Nm {
  if (!keeps.includes(side)) return cut.box[side];
  const own = { left: 0, bottom: 0, right: tile.face.across, top: tile.face.up };
  return own[side];
}

function edge(side: Side, { keeps }: Batch): string {
  return keeps.includes(side) ? `${side} factory edge` : `${side} edge`;
}

function holeWords(hole: DrilledHole, both: Print): string {
  const { name, fromLeft, fromBottom, across, plate } = hole;
  const centre = [outwards(fromLeft, "left", both), outwards(fromBottom, "bottom", both)].join(
    " and ",
  );
  const covered = plate ? `; a plate of ${plateWords(plate, both)} will cover it` : "";
  return `round hole ${plainText(name)}, ${both(across)} across: its centre ${centre}${covered}`;
}

/** The plan knows no corner's angle: the blade leans by half of it. */
function mitreWords({ side, length }: Mitre, both: Print): string {
  return (
    `mitre along the ${side}, ${both(length)}: back from the edge of the face, which stays whole, ` +
    "by half the corner's angle (45 degrees where that is square)"
  );
}

/** A centre may lie outside the tile. */
function outwards(from: Nm, side: Side, both: Print): string {
  const where = from < 0 ? "outside" : "from";
  return `${both(Math.abs(from))} ${where} the tile's own ${side} edge`;
}
