import { solveClean } from "../support/solve-text.js";
import { cornersOver, type Corner } from "../../src/rules/corner.js";

/** The lines of a plan of two walls that differ from a plain one. The side wall's tile covers the back wall's right end. */
export interface CornerText {
  /** Lines at the top of the plan. */
  readonly plan?: string;
  readonly bed?: string;
  readonly thickness?: string;
  readonly size?: string;
  readonly bond?: string;
  readonly joint?: string;
  readonly across?: string;
  readonly up?: string;
  /** The side wall's, where they are not the back wall's. */
  readonly side?: {
    readonly tile?: string;
    readonly size?: string;
    readonly bond?: string;
    readonly joint?: string;
    readonly across?: string;
    readonly up?: string;
    readonly corner?: string;
    /** Further lines of the wall, and of the lay. */
    readonly wall?: string;
    readonly lay?: string;
  };
  readonly corner?: string;
}

/** The text of the plan: tile of 6 x 3 in, joints of 1/16 in; `nm` is one nanometre. */
export function cornerText(parts: CornerText = {}): string {
  const { side = {} } = parts;
  return `plan "Test"
units inch
bed ${parts.bed ?? "1/16"}
let nm = 0.000001mm
${parts.plan ?? ""}
tile field {
  face 6 x 3
  thickness ${parts.thickness ?? "1/16"}
  variation 1/64
}
tile tall {
  face 6 x 6 1/16
  thickness ${parts.thickness ?? "1/16"}
  variation 1/64
}
tile low {
  face 6 x 2 15/16
  thickness ${parts.thickness ?? "1/16"}
  variation 1/64
}
tile odd {
  face 6 x 4
  thickness ${parts.thickness ?? "1/16"}
  variation 1/64
}
wall back "Back wall" {
  size ${parts.size ?? "60 x 48"}
  bottom free
  top free
  right ${parts.corner ?? "corner side under movement 1/8"}
  lay field {
    bond ${parts.bond ?? "stack"}
    joint ${parts.joint ?? "1/16"}
    across ${parts.across ?? "tile centred on wall"}
    up ${parts.up ?? "full course from bottom"}
  }
}
wall side "Side wall" {
  size ${side.size ?? "36 x 48"}
  bottom free
  top free
  left ${side.corner ?? "corner back over movement 1/8"}
${side.wall ?? ""}
  lay ${side.tile ?? "field"} {
    bond ${side.bond ?? parts.bond ?? "stack"}
    joint ${side.joint ?? parts.joint ?? "1/16"}
    across ${side.across ?? "tile centred on wall"}
    up ${side.up ?? parts.up ?? "full course from bottom"}
${side.lay ?? ""}
  }
}
`;
}

/** The corners of a plan at which each of its walls covers another. */
export function cornersOf(text: string): Corner[] {
  const { solved } = solveClean(text);
  return solved.walls.flatMap((wall) => cornersOver(wall, solved));
}
