import type { SolvedLay, SolvedWall } from "../../solver/index.js";
import type { PieceCut } from "../takeoff.js";
import { fencesOf } from "./fences.js";
import { holesOf } from "./holes.js";
import { mitresOf } from "./mitres.js";
import { notchesOf } from "./notches.js";
import { tapersOf } from "./tapers.js";
import { boundsWithinTile } from "./tile-frame.js";

/** How a piece that is no whole tile, or has a mitred edge, is cut from its tile. */
export function pieceCut(wall: SolvedWall, lay: SolvedLay, i: number): PieceCut {
  const box = boundsWithinTile(lay, i);
  const cuts = {
    fences: fencesOf(lay, i, box),
    tapers: tapersOf(lay, i),
    notches: notchesOf(lay, i),
    holes: holesOf(lay, i),
    mitres: mitresOf(wall, lay, i),
  };
  return { kind: kindOf(cuts), box, ...cuts };
}

/** The last of its cuts in the order of work. */
function kindOf({
  fences,
  tapers,
  notches,
  holes,
  mitres,
}: Omit<PieceCut, "kind" | "box">): PieceCut["kind"] {
  if (mitres.length > 0) return "mitre";
  if (holes.length > 0) return "hole";
  if (notches.length > 0) return "notch";
  if (tapers.length > 0) return "taper";
  if (fences.length > 1) return "corner";
  return fences[0]?.along === "across" ? "crosscut" : "rip";
}
