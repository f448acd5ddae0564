import type { Dom } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import type { PieceGroup, PieceKind, WallScene } from "../scene.js";
import { fillOf, TONES } from "../theme.js";
import { hatchFill } from "./patterns.js";
import { add, ringPath, type Attributes } from "./pen.js";

/** The pieces: one group a kind, in it one path a course, so that a small change is a small diff. */
export function drawPieces(into: Dom, wall: WallScene, em: number): void {
  let group: Dom | null = null;
  let kind: PieceKind | null = null;
  for (const pieces of wall.pieces) {
    if (!group || pieces.kind !== kind) {
      kind = pieces.kind;
      group = add(into, "g", pieceStyle(kind, em));
    }
    add(group, "path", {
      id: `gl-${idPart(wall.name)}-${pieces.kind}-${pieces.course}`,
      d: piecesPath(pieces),
    });
  }
}

/** Whole tiles are plain; the others are hatched, and a sliver is outlined as well. */
export function pieceStyle(kind: PieceKind, em: number): Attributes {
  if (kind === "whole") return { "data-kind": kind, ...fillOf("tile") };
  const hatched = { "data-kind": kind, fill: hatchFill(kind), "fill-rule": "evenodd" };
  if (kind !== "sliver") return hatched;
  return {
    ...hatched,
    class: "gl-stroke-sliver-hatch",
    stroke: TONES["sliver-hatch"].light,
    "stroke-width": 0.07 * em,
  };
}

function piecesPath({ boxes, shapes }: PieceGroup): string {
  const parts: string[] = [];
  for (let i = 0; i < boxes.length; i += 4) {
    const left = boxes[i]!;
    parts.push(`M${left} ${boxes[i + 3]!}H${boxes[i + 2]!}V${boxes[i + 1]!}H${left}z`);
  }
  for (const rings of shapes) for (const ring of rings) parts.push(ringPath(ring));
  return parts.join("");
}
