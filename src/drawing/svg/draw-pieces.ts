import type { Dom } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import type { PieceGroup, Points, WallScene } from "../scene.js";
import { fillOf } from "../theme.js";
import { drawHatched } from "./hatches.js";
import { add, ringPath } from "./pen.js";

/**
 * The pieces: one group a kind, in it one path a course, so that a small change is a small diff.
 * Whole tiles are plain; the others are hatched, each kind its own way.
 */
export function drawPieces(into: Dom, wall: WallScene, em: number): void {
  const kinds = [...new Set(wall.pieces.map((group) => group.kind))];
  for (const kind of kinds) {
    const id = `gl-${idPart(wall.name)}-${kind}`;
    const groups = wall.pieces.filter((pieces) => pieces.kind === kind);
    if (kind !== "whole") {
      const shapes = groups.map((group) => ({
        id: `${id}-${group.course}`,
        pieces: ringsOfPieces(group),
      }));
      drawHatched(into, { hatch: kind, id, shapes }, em);
      continue;
    }
    const whole = add(into, "g", { id, "data-kind": kind, ...fillOf("tile") });
    for (const group of groups) {
      add(whole, "path", { id: `${id}-${group.course}`, d: wholePath(group) });
    }
  }
}

function ringsOfPieces({ boxes, shapes }: PieceGroup): (readonly Points[])[] {
  const pieces: (readonly Points[])[] = [];
  for (let i = 0; i < boxes.length; i += 4) {
    const [left, top, right, bottom] = [boxes[i]!, boxes[i + 1]!, boxes[i + 2]!, boxes[i + 3]!];
    pieces.push([[left, bottom, right, bottom, right, top, left, top]]);
  }
  return [...pieces, ...shapes];
}

/** Whole tiles by the thousand: their paths are written straight from the numbers. */
function wholePath({ boxes, shapes }: PieceGroup): string {
  const parts: string[] = [];
  for (let i = 0; i < boxes.length; i += 4) {
    const left = boxes[i]!;
    parts.push(`M${left} ${boxes[i + 3]!}H${boxes[i + 2]!}V${boxes[i + 1]!}H${left}z`);
  }
  for (const rings of shapes) for (const ring of rings) parts.push(ringPath(ring));
  return parts.join("");
}
