import { NM_PER, type Nm } from "../../src/measure/index.js";
import type {
  LaySketch,
  OpeningSketch,
  SecondLay,
  SetSketch,
  SideSketch,
  Sketch,
  WallSketch,
  WishSketch,
} from "./sketch.js";

type Print = (length: Nm) => string;

/** The sketch as the text of a plan; `inch` needs lengths in whole 1/64 in. */
export function printSketch(sketch: Sketch, units: "inch" | "mm"): string {
  return `${sketchBlocks(sketch, units).join("\n")}\n`;
}

/** The same as statements and blocks of the plan, one each. */
export function sketchBlocks(sketch: Sketch, units: "inch" | "mm"): string[] {
  const print = units === "mm" ? inMillimetres : inInches;
  const { tile, trim, accent } = sketch;
  return [
    'plan "sketch"',
    `units ${units}`,
    `bed ${print(sketch.bed)}`,
    tileBlock("field", tile, print),
    ...(accent ? [tileBlock("accent", accent, print)] : []),
    [
      "trim edging {",
      `  face ${print(trim.along)} x ${print(trim.across)}`,
      `  thickness ${print(tile.thickness)}`,
      "}",
    ].join("\n"),
    ...(sketch.wishes ? [preferLines(sketch.wishes, print).join("\n")] : []),
    ...sketch.walls.map((wall) => wallLines(wall, print).join("\n")),
  ];
}

function preferLines(wishes: readonly WishSketch[], print: Print): string[] {
  const words = wishes.map((wish) =>
    typeof wish === "string" ? wish : `no cut under ${print(wish.noCutUnder)}`,
  );
  return ["prefer {", ...words.map((line) => `  ${line}`), "}"];
}

function tileBlock(name: string, tile: Sketch["tile"], print: Print): string {
  return [
    `tile ${name} {`,
    `  face ${print(tile.across)} x ${print(tile.up)}`,
    `  thickness ${print(tile.thickness)}`,
    "}",
  ].join("\n");
}

function wallLines(wall: WallSketch, print: Print): string[] {
  return [
    `wall ${wall.name} {`,
    sizeText(wall, print),
    ...(wall.legs ?? []).map(
      ({ side, across, down }) =>
        `  leg ${side} ${print(across)} down ${print(down)} movement ${print(0)}`,
    ),
    ...Object.entries(wall.sides).map(([name, side]) => `  ${name} ${sideText(side, print)}`),
    ...wall.openings.flatMap((opening) => openingLines(opening, print)),
    ...wall.holes.map(
      ({ name, x, y, across }) =>
        `  hole ${name} at ${print(x)}, ${print(y)} across ${print(across)}`,
    ),
    ...(wall.second ? secondLines(wall.second, print) : []),
    ...layLines("field", wall.lay, fieldPlace(wall), print),
    ...(wall.wishes ? preferLines(wall.wishes, print).map((line) => `  ${line}`) : []),
    "}",
  ];
}

function sizeText({ across, up, outline }: WallSketch, print: Print): string {
  if (!outline) return `  size ${print(across)} x ${print(up)}`;
  return `  outline ${outline.map(([x, y]) => `${print(x)}, ${print(y)}`).join(" to ")}`;
}

function secondLines({ place, lay }: SecondLay, print: Print): string[] {
  return layLines("accent", lay, placeLines(place, print), print);
}

function placeLines(place: SecondLay["place"], print: Print): string[] {
  if ("covers" in place) {
    return [`    covers ${place.covers} to ${print(place.to)}`];
  }
  if ("courses" in place) return [`    courses ${place.courses}`];
  return [
    `    at ${print(place.x)}, ${print(place.y)}`,
    `    size ${print(place.across)} x ${print(place.up)}`,
  ];
}

/** A lay over one that counts its courses has to say so; over any other place it has the rest. */
function fieldPlace({ second, list }: WallSketch): string[] {
  if (list !== undefined) return [`    courses ${list}, 1 of accent, rest of field`];
  return second && "courses" in second.place ? ["    over accent"] : [];
}

function sideText(side: SideSketch, print: Print): string {
  const readings = side.measured.map(([at, off]) => `${print(at)}: ${print(off)}`);
  const measured = readings.length > 0 ? ` measured ${readings.join(", ")}` : "";
  return (
    side.meets + measured + (side.movement === null ? "" : ` movement ${print(side.movement)}`)
  );
}

function openingLines(opening: OpeningSketch, print: Print): string[] {
  const range = (from: Nm, more: Nm): string =>
    more > 0 ? `${print(from)} to ${print(from + more)}` : print(from);
  const lines = [
    `  ${opening.kind} ${opening.name} {`,
    `    at ${range(opening.x, opening.free?.across ?? 0)}${opening.reaches ? "" : `, ${range(opening.y, opening.free?.up ?? 0)}`}`,
    `    size ${print(opening.across)} x ${print(opening.up)}`,
  ];
  if (opening.frame) {
    lines.push(`    frame edging ${opening.frame.join}`, `    inset ${print(opening.frame.inset)}`);
  }
  if (opening.movement !== null) lines.push(`    movement ${print(opening.movement)}`);
  return [...lines, "  }"];
}

function layLines(
  tile: string,
  { bond, joint, across, up, set }: LaySketch,
  place: readonly string[],
  print: Print,
): string[] {
  const width =
    typeof joint === "number" ? print(joint) : `${print(joint.min)} to ${print(joint.max)}`;
  const lines = [
    `  lay ${tile} {`,
    ...place,
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
  if ("goesOn" in across) {
    const [way, ...how] = across.goesOn.split(" ");
    return [way, "from", across.from, ...how].join(" ");
  }
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
