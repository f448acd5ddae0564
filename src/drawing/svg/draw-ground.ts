import type { Dom } from "@svgdotjs/svg.js";
import { idPart } from "../plain-text.js";
import type { BandKind, WallScene } from "../scene.js";
import { fillOf, strokeOf } from "../theme.js";
import { hatchFill } from "./patterns.js";
import { add, linePath, ringPath, type Attributes } from "./pen.js";

const BAND_ORDER: readonly BandKind[] = ["grout", "build", "soft"];

/** The bare wall, the grout that shows between pieces, soft joints, the next wall's tile on end. */
export function drawGround(into: Dom, wall: WallScene): void {
  add(into, "path", { ...fillOf("substrate"), d: ringPath(wall.bare) });
  drawBands(into, wall, BAND_ORDER.slice(0, 2), (part) => part !== "");
  drawBands(into, wall, ["soft"], (part) => !part.startsWith("opening-"));
}

/** The soft joints round openings lie over the frames that they meet. */
export function drawOpeningJoints(into: Dom, wall: WallScene): void {
  drawBands(into, wall, ["soft"], (part) => part.startsWith("opening-"));
}

function drawBands(
  into: Dom,
  wall: WallScene,
  kinds: readonly BandKind[],
  wanted: (part: string) => boolean,
): void {
  for (const kind of kinds) {
    const bands = wall.bands.filter((band) => band.kind === kind && wanted(band.part));
    if (bands.length === 0) continue;
    const group = add(into, "g", { ...bandStyle(kind), "fill-rule": "evenodd" });
    for (const { part, rings } of bands) {
      add(group, "path", {
        id: `gl-${idPart(wall.name)}-${kind}-${idPart(part)}`,
        d: rings.map(ringPath).join(""),
      });
    }
  }
}

export function bandStyle(kind: BandKind): Attributes {
  return kind === "grout"
    ? { "data-kind": kind, ...fillOf("grout") }
    : { "data-kind": kind, fill: hatchFill(kind) };
}

/** Strips behind another wall's tile: veiled, hatched, and ended by a dashed line. */
export function drawHidden(into: Dom, wall: WallScene, em: number): void {
  for (const { side, ring, limit } of wall.hidden) {
    const group = add(into, "g", { id: `gl-${idPart(wall.name)}-hidden-${side}` });
    add(group, "path", { ...fillOf("paper"), "fill-opacity": 0.55, d: ringPath(ring) });
    add(group, "path", { fill: hatchFill("hidden"), d: ringPath(ring) });
    add(group, "path", {
      ...strokeOf("ink"),
      "stroke-width": 0.07 * em,
      "stroke-dasharray": dashes([0.35, 0.2], em),
      d: linePath(limit),
    });
  }
}

/** A dash pattern given in ems. */
export function dashes(ems: readonly number[], em: number): string {
  return ems.map((each) => Math.round(each * em * 1000) / 1000).join(" ");
}
