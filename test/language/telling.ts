import type { Resolved } from "../../src/language/index.js";
import { parse, resolve } from "../../src/language/index.js";
import type { Diagnostic, Plan, SourceRange, Wall } from "../../src/model/index.js";

/** Files of a workspace held in memory, by their path. */
export type Files = Readonly<Record<string, string>>;

export const FILE = "plans/bath.tileplan";

/** Resolves a text that stands in a workspace of its own. */
export function resolveText(text: string, files: Files = {}): Resolved {
  return resolve(parse(text), { file: FILE, root: "", read: (path) => files[path] ?? null });
}

/** What is told of a text: `code [the text underlined] message`. */
export function told(text: string, files: Files = {}): string[] {
  return resolveText(text, files).diagnostics.map((diagnostic) => tellingOf(diagnostic, text));
}

export function tellingOf({ code, range, message }: Diagnostic, text: string): string {
  return `${code} [${underlined(range, text)}] ${message}`;
}

export function underlined({ start, end }: SourceRange, text: string): string {
  const lines = text.split(/\r\n|\n|\r/);
  if (start.line === end.line) return lines[start.line]!.slice(start.character, end.character);
  const middle = lines.slice(start.line + 1, end.line);
  return [
    lines[start.line]!.slice(start.character),
    ...middle,
    lines[end.line]!.slice(0, end.character),
  ].join("\n");
}

export function planOf(text: string, files: Files = {}): Plan {
  return resolveText(text, files).plan;
}

/** A plan of a wall of 60 x 96 in with these lines in it, and a tile, a trim and a second wall beside it. */
export function wallText(lines: string): string {
  return `${STOCK}
wall back {
  size 60 x 96
${lines}
}
`;
}

export function wallOf(lines: string): Wall {
  return planOf(wallText(lines)).walls[0]!;
}

export const STOCK = `tile field "3 x 6" {
  face 5 7/8 x 2 7/8
  thickness 5/16
}
trim nose {
  face 5 7/8 x 1 7/8
  thickness 5/16
}`;

export const INCH = 25_400_000;

/** The design's example: every statement of the language, nothing wrong with it. */
export const FULL = `plan "Alder Court guest bath"
units inch
bed 1/8                                   # mortar behind the tile, after embedding
let sill = 46 1/4
let head = sill + 2 * (12 - 1/2) / 1

tile field "3 x 6 pressed wall tile, white" {
  face 5 7/8 x 2 7/8
  thickness 5/16
  variation 1/64
  warpage 1/32
  edges pressed
  box 88
  directional
  lot "7B"
  price 42.50 a box
  breakage 3%
  spares 6
  allow joint/too-narrow "the maker allows it"
}

trim nose "bullnose" {
  face 5 7/8 x 1 7/8
  thickness 5/16
  lot "7B"
  price 3.10 a piece
}

saw {
  kerf 3/32
  rip 24
}

mortar "white, for glazed tile" {
  notch 1/4 x 3/8
  bag 50 lb covers 40sqft
  back-butter 1/16
  price 24 a bag
}

grout "warm grey" {
  density 1.6
  bag 25lb
  price 31 a bag
}

sealant {
  tube 10.1 floz
  depth 1/4
  price 9 a tube
}

wall back "Back wall" {
  size 60 x 96
  bottom pan measured 0: 0, 30: -3/16, 60: 1/8 movement 1/8
  left corner plumbing under movement 1/8
  right free trim nose joint 1/16
  top ceiling movement 1/8

  window sash {
    at 18, sill
    size 24 x 36
    frame nose mitre
    inset 1/4
    movement 1/16
  }
  niche soap {
    at 44, 40
    size 12 x 12
    frame nose butt
    depth 3 1/2
    fall 5/64
    allow opening/off-joint "fixed by the studs"
  }
  hole valve at 8, 44 across 4 1/2

  lay field {
    bond running 1/2
    joint 1/16 to 1/8
    across tile centred on wall
    up full course from bottom
  }
  allow balance/unequal-ends "the door hides it"
}

wall plumbing {
  size 3ft x 8ft
  right corner back over movement 1/8
  door hatch {
    at 2
    size 18 x 30
  }
  lay field {
    bond stack
    joint 1/8
    across joint centred at 18
    up full course over hatch
  }
}

rules {
  sliver 1, half off
  offset 1/3
}
allow movement/narrow "agreed with the maker"
`;

/** The processor's milliseconds that a run takes, however busy the machine is with others. */
export function costOf(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
