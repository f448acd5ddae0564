import type { Dom } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import type { PictureBox, PieceGroup, WallScene } from "../scene.js";
import { fillOf } from "../theme.js";
import { drawHatched } from "./hatches.js";
import { add, ringPath } from "./pen.js";

/**
 * The pieces: one group a kind, in it one path a course, so that a small change is a small diff.
 * Whole tiles are plain; the others are hatched, each kind its own way.
 */
export function drawPieces(into: Dom, wall: WallScene, within: PictureBox, em: number): void {
  const kinds = [...new Set(wall.pieces.map((group) => group.kind))];
  for (const kind of kinds) {
    const id = `gl-${idPart(wall.name)}-${kind}`;
    const shapes = wall.pieces
      .filter((pieces) => pieces.kind === kind)
      .map((pieces) => ({ id: `${id}-${pieces.course}`, d: piecesPath(pieces) }));
    if (kind !== "whole") {
      drawHatched(into, { hatch: kind, id, shapes, within }, em);
      continue;
    }
    const group = add(into, "g", { id, "data-kind": kind, ...fillOf("tile") });
    for (const shape of shapes) add(group, "path", shape);
  }
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
