import type { Nm } from "../../measure/index.js";
import type { Plate } from "../../model/index.js";
import type { SolvedWall } from "../../solver/index.js";
import { boxWithin, lineHeight, makeLabel } from "../labels.js";
import { across, down, pictureBox, rounded } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { HoleScene, Label, OpeningScene, PictureBox, PlateScene } from "../scene.js";
import { textWidth } from "../text-metrics.js";
import { openingBox } from "./ground.js";
import type { Setting } from "./setting.js";

export function openingScenes({ region, wall }: SolvedWall): OpeningScene[] {
  return region.takeaways.map((takeaway) => ({
    kind: takeaway.opening.kind,
    name: takeaway.opening.name,
    box: pictureBox(openingBox(wall, takeaway)),
  }));
}

export function holeScenes({ region }: SolvedWall): HoleScene[] {
  return region.roundHoles.map(({ hole }) => ({
    name: hole.name,
    middle: { x: across(hole.at.x), y: down(hole.at.y) },
    radius: rounded(hole.across / 2e6),
    plate: hole.plate && plateScene(hole.plate),
  }));
}

function plateScene(plate: Plate): PlateScene {
  if (plate.kind === "round") return { kind: "round", radius: rounded(plate.across / 2e6) };
  const [halfAcross, halfUp] = [rounded(plate.across / 2e6), rounded(plate.up / 2e6)];
  return { kind: "square", halfAcross, halfUp };
}

/** The room that a hole takes in the picture, with its plate. */
export function holeRoom({ middle: { x, y }, radius, plate }: HoleScene): PictureBox {
  const [across, up] =
    plate?.kind === "square" ? [plate.halfAcross, plate.halfUp] : [plate?.radius, plate?.radius];
  const [wide, high] = [Math.max(radius, across ?? 0), Math.max(radius, up ?? 0)];
  return { left: x - wide, right: x + wide, top: y - high, bottom: y + high };
}

/** A name that has to be shown, and where it may stand inside what it names. */
export interface NamedThing {
  /** From the fullest wording to the shortest; each is its lines. */
  readonly wordings: readonly (readonly string[])[];
  readonly inside: PictureBox | null;
  readonly around: PictureBox;
}

export function namedThings(solved: SolvedWall, setting: Setting): NamedThing[] {
  const { length } = setting;
  const openings = solved.region.takeaways.map((takeaway): NamedThing => {
    const { opening } = takeaway;
    const { size, kind } = opening;
    const name = `${kind} ${plainText(opening.name)}`;
    const measure = `${length(size.across)} × ${length(size.up)}`;
    const inside = pictureBox(openingBox(solved.wall, takeaway));
    return {
      wordings: [[name, measure], [`${name}, ${measure}`], [name]],
      inside,
      around: inside,
    };
  });
  const scenes = holeScenes(solved);
  const holes = solved.region.roundHoles.map(({ hole }, i): NamedThing => {
    const name = `hole ${plainText(hole.name)}`;
    const measure = `${length(hole.across)} across`;
    const plates = hole.plate ? [[name, measure, `plate ${plateWords(hole.plate, length)}`]] : [];
    return {
      wordings: [...plates, [name, measure], [name]],
      inside: null,
      around: holeRoom(scenes[i]!),
    };
  });
  return [...openings, ...holes];
}

function plateWords(plate: Plate, length: (nm: Nm) => string): string {
  const across = length(plate.across);
  return plate.kind === "round" ? across : `${across} × ${length(plate.up)}`;
}

/** The lines of a wording, stacked round a middle. */
export function stackedLabels(
  lines: readonly string[],
  middle: { x: number; y: number },
  size: number,
): Label[] {
  const step = lineHeight(size);
  return lines.map((text, i) =>
    makeLabel({
      text,
      role: "name",
      x: middle.x,
      y: middle.y + (i - (lines.length - 1) / 2) * step,
      size: i === 0 ? size : size * 0.92,
      bold: i === 0,
    }),
  );
}

/** The first wording that fits inside the thing, as labels; null when none does. */
export function labelsInside(thing: NamedThing, size: number): Label[] | null {
  const { inside } = thing;
  if (!inside) return null;
  const room = {
    left: inside.left + size / 2,
    right: inside.right - size / 2,
    top: inside.top + size / 4,
    bottom: inside.bottom - size / 4,
  };
  const middle = { x: (inside.left + inside.right) / 2, y: (inside.top + inside.bottom) / 2 };
  for (const lines of thing.wordings) {
    const labels = stackedLabels(lines, middle, size);
    if (labels.every((label) => boxWithin(label.box, room))) return labels;
  }
  for (const lines of thing.wordings) {
    const [text] = lines;
    if (lines.length > 1 || text === undefined) continue;
    const label = makeLabel({ text, role: "name", ...middle, size, bold: true, upward: true });
    if (boxWithin(label.box, room)) return [label];
  }
  return null;
}

/** The room that a wording takes, in a column. */
export function wordingSize(lines: readonly string[], size: number): { w: number; h: number } {
  return {
    w: Math.max(...lines.map((line) => textWidth(line, size, "bold"))),
    h: lines.length * lineHeight(size),
  };
}
