import type { Dom } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import type { BandKind, WallScene } from "../scene.js";
import { fillOf, strokeOf } from "../theme.js";
import { dashes } from "./dashes.js";
import { drawHatched } from "./hatches.js";
import { add, linePath, ringPath } from "./pen.js";

/** The bare wall, the grout that shows between pieces, the next wall's tile on end. */
export function drawGround(into: Dom, wall: WallScene, em: number): void {
  add(into, "path", { ...fillOf("substrate"), d: ringPath(wall.bare) });
  for (const kind of ["grout", "build"] as const) drawBands(into, wall, kind, em);
}

/** Bands of one kind. */
export function drawBands(into: Dom, wall: WallScene, kind: BandKind, em: number): void {
  const id = `gl-${idPart(wall.name)}-${kind}`;
  const shapes = wall.bands
    .filter((band) => band.kind === kind)
    .map(({ part, rings }) => ({
      id: `${id}-${idPart(part)}`,
      pieces: [rings],
    }));
  if (kind !== "grout") {
    const hatch = kind === "bead" ? "soft" : kind;
    drawHatched(into, { hatch, id, shapes }, em);
    return;
  }
  const group = add(into, "g", { id, "data-kind": kind, ...fillOf("grout") });
  for (const { id, pieces } of shapes) {
    add(group, "path", { id, d: pieces.flat().map(ringPath).join("") });
  }
}

/** Strips behind another wall's tile: veiled, hatched, and ended by a dashed line. */
export function drawHidden(into: Dom, wall: WallScene, em: number): void {
  for (const { side, ring, limit } of wall.hidden) {
    const id = `gl-${idPart(wall.name)}-hidden-${side}`;
    const d = ringPath(ring);
    add(into, "path", { ...fillOf("paper"), "fill-opacity": 0.55, d });
    const shapes = [{ id: `${id}-strip`, pieces: [[ring]] }];
    drawHatched(into, { hatch: "hidden", id, shapes }, em);
    add(into, "path", {
      ...strokeOf("ink"),
      "stroke-width": 0.07 * em,
      "stroke-dasharray": dashes([0.35, 0.2], em),
      d: linePath(limit),
    });
  }
}
