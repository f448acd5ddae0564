import { NM_PER, type Nm } from "../../src/measure/index.js";
import type {
  LaySketch,
  OpeningSketch,
  SetSketch,
  SideSketch,
  Sketch,
  WallSketch,
} from "./sketch.js";

type Print = (length: Nm) => string;

/** The sketch as the text of a plan; `inch` needs lengths in whole 1/64 in. */
export function printSketch(sketch: Sketch, units: "inch" | "mm"): string {
  return `${sketchBlocks(sketch, units).join("\n")}\n`;
}

/** The same as statements and blocks of the plan, one each. */
export function sketchBlocks(sketch: Sketch, units: "inch" | "mm"): string[] {
  const print = units === "mm" ? inMillimetres : inInches;
  const { tile, trim } = sketch;
  return [
    'plan "sketch"',
    `units ${units}`,
    `bed ${print(sketch.bed)}`,
    [
      "tile field {",
      `  face ${print(tile.across)} x ${print(tile.up)}`,
      `  thickness ${print(tile.thickness)}`,
      "}",
    ].join("\n"),
    [
      "trim edging {",
      `  face ${print(trim.along)} x ${print(trim.across)}`,
      `  thickness ${print(tile.thickness)}`,
      "}",
    ].join("\n"),
    ...sketch.walls.map((wall) => wallLines(wall, print).join("\n")),
  ];
}

function wallLines(wall: WallSketch, print: Print): string[] {
  return [
    `wall ${wall.name} {`,
    `  size ${print(wall.across)} x ${print(wall.up)}`,
    ...Object.entries(wall.sides).map(([name, side]) => `  ${name} ${sideText(side, print)}`),
    ...wall.openings.flatMap((opening) => openingLines(opening, print)),
    ...wall.holes.map(
      ({ name, x, y, across }) =>
        `  hole ${name} at ${print(x)}, ${print(y)} across ${print(across)}`,
    ),
    ...layLines(wall.lay, print),
    "}",
  ];
}

function sideText(side: SideSketch, print: Print): string {
  const readings = side.measured.map(([at, off]) => `${print(at)}: ${print(off)}`);
  const measured = readings.length > 0 ? ` measured ${readings.join(", ")}` : "";
  return (
    side.meets + measured + (side.movement === null ? "" : ` movement ${print(side.movement)}`)
  );
}

function openingLines(opening: OpeningSketch, print: Print): string[] {
  const lines = [
    `  ${opening.kind} ${opening.name} {`,
    `    at ${print(opening.x)}, ${print(opening.y)}`,
    `    size ${print(opening.across)} x ${print(opening.up)}`,
  ];
  if (opening.frame) {
    lines.push(`    frame edging ${opening.frame.join}`, `    inset ${print(opening.frame.inset)}`);
  }
  if (opening.movement !== null) lines.push(`    movement ${print(opening.movement)}`);
  return [...lines, "  }"];
}

function layLines({ bond, joint, across, up, set }: LaySketch, print: Print): string[] {
  const width =
    typeof joint === "number" ? print(joint) : `${print(joint.min)} to ${print(joint.max)}`;
  const lines = [
    "  lay field {",
    bond === "stack" ? "    bond stack" : `    bond running ${bond.p}/${bond.q}`,
    `    joint ${width}`,
  ];
  if (across) lines.push(`    across ${acrossText(across, print)}`);
  if (up) lines.push(`    up ${upText(up, print)}`);
  if (set) lines.push(`    set courses ${set.from} to ${set.to}${topsText(set, print)}`);
  return [...lines, "  }"];
}

function topsText({ tops }: SetSketch, print: Print): string {
  const told = tops.map(({ at, y }) => {
    if (at === null) return print(y);
    return `${print(y)} at ${typeof at === "number" ? print(at) : at}`;
  });
  return told.length === 0 ? "" : ` top ${told.join(", ")}`;
}

function acrossText(across: NonNullable<LaySketch["across"]>, print: Print): string {
  if ("full" in across) return `full tile from ${across.full}`;
  if ("at" in across) return `${across.kind} centred at ${print(across.at)}`;
  return `${across.kind} centred on ${across.on === "wall" ? "wall" : across.on.opening}`;
}

function upText(up: NonNullable<LaySketch["up"]>, print: Print): string {
  if ("full" in up) return `full course from ${up.full}`;
  if ("jointAt" in up) return `joint at ${print(up.jointAt)}`;
  return `full course ${up.relation} ${up.opening}`;
}

/** Decimal millimetres, exact: a nanometre is the sixth decimal. */
function inMillimetres(length: Nm): string {
  const sign = length < 0 ? "-" : "";
  const digits = String(Math.abs(length)).padStart(7, "0");
  const decimals = digits.slice(-6).replace(/0+$/, "");
  return sign + digits.slice(0, -6) + (decimals ? `.${decimals}` : "");
}

/** Inches and 64ths, as a rule shows them. */
function inInches(length: Nm): string {
  const in64ths = (Math.abs(length) * 64) / NM_PER.inch;
  if (!Number.isInteger(in64ths)) throw new RangeError(`${length} nm is not a whole 1/64 in`);
  const sign = length < 0 ? "-" : "";
  const whole = Math.floor(in64ths / 64);
  let [top, bottom] = [in64ths % 64, 64];
  if (top === 0) return `${sign}${whole}`;
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return sign + (whole > 0 ? `${whole} ` : "") + `${top}/${bottom}`;
}
