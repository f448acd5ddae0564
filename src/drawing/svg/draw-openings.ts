import type { Dom } from "@svgdotjs/svg.js";
import { isSolid } from "../../model/index.js";
import { idPart } from "../plain-text.js";
import type { OpeningScene, Place, PlateScene, Points, TrimScene, WallScene } from "../scene.js";
import { fillAndStroke, fillOf, strokeOf, type ToneName } from "../theme.js";
import { boxRing, rounded } from "../picture.js";
import { dashes } from "./dashes.js";
import { drawHatched } from "./hatches.js";
import { hatchPath } from "./hatch-path.js";
import { add, boxPath, linePath, ringPath } from "./pen.js";

/** Frames and edge trims; the line round each piece shows the mitres, whose joint is closed. */
export function drawTrims(into: Dom, wall: WallScene, em: number): void {
  if (wall.trims.length === 0) return;
  const id = `gl-${idPart(wall.name)}-trim`;
  const shapesOf = (prefix: string, pieces: (trim: TrimScene) => readonly Points[]) =>
    wall.trims
      .filter((trim) => pieces(trim).length > 0)
      .map((trim) => ({
        id: `${prefix}-${idPart(trim.part)}`,
        pieces: pieces(trim).map((ring) => [ring]),
      }));
  const style = { ...fillAndStroke("trim", "trim-line"), "stroke-width": 0.035 * em };
  const whole = add(into, "g", { id, "data-kind": "trim", ...style });
  for (const { id: path, pieces } of shapesOf(id, (trim) => trim.pieces)) {
    add(whole, "path", { id: path, d: pieces.flat().map(ringPath).join("") });
  }
  const shapes = shapesOf(`${id}-cut`, (trim) => trim.cut);
  drawHatched(into, { hatch: "trim", id: `${id}-cut`, shapes }, em);
}

/** Openings: each kind has a sign of its own besides its name. */
export function drawOpenings(into: Dom, wall: WallScene, em: number): void {
  for (const opening of wall.openings) {
    const group = add(into, "g", { id: `gl-${idPart(wall.name)}-opening-${idPart(opening.name)}` });
    add(group, "path", { ...fillOf(toneOf(opening)), d: boxPath(opening.box) });
    drawSign(group, opening, em);
    add(group, "path", {
      ...strokeOf("ink"),
      "stroke-width": 0.06 * em,
      d: boxPath(opening.box),
    });
  }
}

/** What stands before the wall is shown as the build of another wall is: as a solid thing. */
function toneOf(opening: OpeningScene): ToneName {
  const { kind } = opening;
  return kind === "window" || kind === "niche" || kind === "door" ? kind : "build";
}

function drawSign(group: Dom, opening: OpeningScene, em: number): void {
  const { left, right, top, bottom } = opening.box;
  const size = Math.min(right - left, bottom - top);
  if (opening.kind === "window") drawWindowSign(group, opening, Math.min(0.45 * em, size / 8), em);
  if (opening.kind === "niche") {
    // A recess lit from above left: its head and left side are in shade.
    const deep = rounded(Math.min(0.5 * em, size / 6));
    const ring = [left, bottom, left, top, right, top];
    const inner = [right - deep, top + deep, left + deep, top + deep, left + deep, bottom - deep];
    add(group, "path", {
      ...fillOf("muted"),
      "fill-opacity": 0.35,
      d: ringPath([...ring, ...inner].map(rounded)),
    });
  }
  if (isSolid(opening)) drawSolidSign(group, opening, Math.min(0.7 * em, size / 3), em);
  if (opening.kind === "door") {
    const middle = rounded((top + bottom) / 2);
    add(group, "path", {
      ...strokeOf("muted"),
      "stroke-width": 0.05 * em,
      "stroke-dasharray": dashes([0.5, 0.3], em),
      d: linePath([left, top, right, middle, left, bottom]),
    });
  }
}

/** A hatched border, as a section through something solid has; its middle is left to its name. */
function drawSolidSign(group: Dom, { box }: OpeningScene, deep: number, em: number): void {
  const inner = {
    left: rounded(box.left + deep),
    right: rounded(box.right - deep),
    top: rounded(box.top + deep),
    bottom: rounded(box.bottom - deep),
  };
  const ruling = { run: "rising", spacing: 0.3 * em, inset: 0 } as const;
  add(group, "path", {
    ...strokeOf("muted"),
    "stroke-width": 0.04 * em,
    d: hatchPath([boxRing(box), boxRing(inner)], ruling),
  });
}

/** A sash inside the opening, with two glints in its upper corner. */
function drawWindowSign(group: Dom, { box }: OpeningScene, inset: number, em: number): void {
  const sash = {
    left: rounded(box.left + inset),
    right: rounded(box.right - inset),
    top: rounded(box.top + inset),
    bottom: rounded(box.bottom - inset),
  };
  const glint = Math.min(2 * em, (sash.right - sash.left) / 3, (sash.bottom - sash.top) / 3);
  const at = (share: number) => {
    const reach = glint * share;
    const from = [sash.right - 0.3 * em - reach, sash.top + 0.3 * em];
    return linePath([...from, sash.right - 0.3 * em, sash.top + 0.3 * em + reach].map(rounded));
  };
  add(group, "path", {
    ...strokeOf("muted"),
    "stroke-width": 0.04 * em,
    d: `${boxPath(sash)}${at(0.6)}${at(1)}`,
  });
}

/** Round holes, with a cross at the middle; a plate is the thin dashed rim of what covers the tile there. */
export function drawHoles(into: Dom, wall: WallScene, em: number): void {
  for (const { name, middle, radius, plate } of wall.holes) {
    const group = add(into, "g", { id: `gl-${idPart(wall.name)}-hole-${idPart(name)}` });
    add(group, "circle", {
      ...fillAndStroke("paper", "ink"),
      "stroke-width": 0.07 * em,
      cx: middle.x,
      cy: middle.y,
      r: radius,
    });
    const arm = radius + 0.3 * em;
    const { x, y } = middle;
    const cross = [linePath([x - arm, y, x + arm, y]), linePath([x, y - arm, x, y + arm])];
    add(group, "path", {
      ...strokeOf("ink"),
      "stroke-width": 0.03 * em,
      d: cross.join("").replace(/-?\d+\.\d+/g, (n) => String(rounded(Number(n)))),
    });
    if (plate) drawPlate(group, middle, plate, em);
  }
}

function drawPlate(into: Dom, { x, y }: Place, plate: PlateScene, em: number): void {
  const line = {
    ...strokeOf("ink"),
    "stroke-width": 0.06 * em,
    "stroke-dasharray": dashes([0.3, 0.1, 0.08, 0.1], em),
    "data-kind": "plate",
  };
  if (plate.kind === "round") {
    add(into, "circle", { ...line, cx: x, cy: y, r: plate.radius });
    return;
  }
  const { halfAcross, halfUp } = plate;
  const box = {
    left: rounded(x - halfAcross),
    right: rounded(x + halfAcross),
    top: rounded(y - halfUp),
    bottom: rounded(y + halfUp),
  };
  add(into, "path", { ...line, d: boxPath(box) });
}
