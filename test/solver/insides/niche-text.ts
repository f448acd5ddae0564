import type { SolvedInside } from "../../../src/solver/index.js";
import type { InsideFace } from "../../../src/model/index.js";
import { pieceBounds, visibleBounds, type Box } from "../../../src/solver/index.js";
import { firstWall, solveClean } from "../../support/solve-text.js";

/** What of a plan of one wall with a niche differs; lengths are millimetres. */
export interface NicheText {
  readonly units?: string;
  /** Lines at the top of the plan. */
  readonly plan?: string;
  readonly face?: string;
  readonly wall?: string;
  readonly kind?: "niche" | "window";
  readonly at?: string;
  readonly size?: string;
  readonly movement?: string;
  /** Further lines of the niche. */
  readonly niche?: string;
  readonly bond?: string;
  readonly across?: string;
}

/**
 * A wall of 200 x 100 tile, 8 thick on a bed of 3, whose joints of 2 begin in the lower left corner: head
 * joints at 200, 402 ..., bed joints at 100, 202 ... Two tiles by three courses are left out for a niche.
 */
export function nicheText(parts: NicheText = {}): string {
  return `plan "Niche"
units ${parts.units ?? "mm"}
bed 3mm
${parts.plan ?? ""}
tile field {
  face ${parts.face ?? "200mm x 100mm"}
  thickness 8mm
}
trim nose {
  face 200mm x 30mm
  thickness 8mm
}
wall back {
  size ${parts.wall ?? "1210mm x 1018mm"}
  left free
  right free
  bottom free
  top free
  ${parts.kind ?? "niche"} shelf {
    at ${parts.at ?? "404mm, 306mm"}
    size ${parts.size ?? "402mm x 304mm"}
    movement ${parts.movement ?? "2mm"}
${parts.niche ?? "    depth 90mm\n    fall 3mm"}
  }
  lay field {
    bond ${parts.bond ?? "stack"}
    joint 2mm
    across ${parts.across ?? "full tile from left"}
    up full course from bottom
  }
}
`;
}

/** The surfaces of a plan's only opening that has any. */
export function insidesOf(parts: NicheText | string = {}): readonly SolvedInside[] {
  const text = typeof parts === "string" ? parts : nicheText(parts);
  return firstWall(solveClean(text)).wall.insides;
}

export function faceOf(insides: readonly SolvedInside[], face: InsideFace): SolvedInside {
  return insides.find((each) => each.face === face)!;
}

/** A surface's pieces as left, bottom, right, top in millimetres, by course. */
export function boxesOf({ lays }: SolvedInside, seen = false): number[][] {
  return lays.flatMap(({ pieces }) =>
    Array.from({ length: pieces.count }, (_, i) => {
      const box: Box | null = seen ? visibleBounds(pieces, i) : pieceBounds(pieces, i);
      return box ? [box.left, box.bottom, box.right, box.top].map((nm) => nm / 1e6) : [];
    }),
  );
}
