import type { Diagnostic } from "../../model/index.js";
import { type SolvedPlan, surfacesOf } from "../../solver/index.js";
import { boxRound, makeLabel } from "../labels.js";
import { rounded } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { Label, PictureBox, Scene } from "../scene.js";
import { fitText, wrapText } from "../text-metrics.js";
import { findingGroups } from "./finding-groups.js";
import { headingLines } from "./headings.js";
import { cautionsBlock, findingsBlock, legendBlock } from "./notes.js";
import { placeNotes } from "./place-notes.js";
import { insideNets } from "./inside-scenes.js";
import { placeInsides } from "./place-insides.js";
import { settingOf, type Setting } from "./setting.js";
import { placeWalls } from "./place-walls.js";
import { WALL_PAD, wallScene } from "./wall-scene.js";

/** Round the picture, in ems. */
const MARGIN = 1.6;
const TITLE_SIZE = 1.9;

/**
 * The scene of a solved plan with its findings. Pure: the same plan and findings give the same
 * scene, to the last digit.
 */
export function buildScene(solved: SolvedPlan, diagnostics: readonly Diagnostic[]): Scene {
  const setting = settingOf(
    solved.plan,
    solved.walls.map((each) => each.wall),
  );
  const { groups, untold } = findingGroups(
    surfacesOf(solved.walls).map((each) => each.wall.name),
    diagnostics,
  );
  const lines = Math.max(0, ...solved.walls.map((each) => headingLines(each, setting).length));
  const unplaced = solved.walls.map((each) =>
    wallScene(
      each,
      groups.filter((group) => group.wall === each.wall.name),
      lines,
      setting,
    ),
  );
  const standing = placeWalls(unplaced, setting);
  const { walls } = standing;
  const several = walls.length > 1;
  const nets = solved.walls.flatMap((each) => insideNets(each, groups, !several, setting));
  const { faces, room } = placeInsides(nets, standing.room, setting.em);
  const glazed = walls.some((wall) => wall.openings.some((opening) => opening.kind === "window"));
  const notes = placeNotes(room, setting.em, ({ single, findings }) => [
    ...(walls.length > 0 ? [legendBlock([...unplaced, ...faces], single)] : []),
    ...(groups.length > 0 ? [findingsBlock(groups, untold, several, findings)] : []),
    cautionsBlock(glazed, single),
  ]);
  const drawn = boxRound([room, ...notes.labels.map((label) => label.box)])!;
  const titles = planTitles(solved, drawn, setting);
  const all = boxRound([drawn, ...titles.map((label) => label.box)])!;
  const title = plainText(solved.plan.title) || "Tile plan";
  return {
    title,
    description: [...walls, ...faces].map((wall) => `${wall.title}: ${wall.description}`).join(" "),
    view: grownBox(all, MARGIN * setting.em),
    em: setting.em,
    walls: [...walls, ...faces],
    labels: [...titles, ...notes.labels],
    swatches: notes.swatches,
    badges: notes.badges,
  };
}

const UNIT_WORDS = {
  inch: "inches",
  mm: "millimetres",
  cm: "centimetres",
  m: "metres",
  foot: "feet and inches",
};

function planTitles({ plan }: SolvedPlan, drawn: PictureBox, { em }: Setting): Label[] {
  const room = Math.max(drawn.right - drawn.left - 2 * em, 30 * em);
  const x = drawn.left + WALL_PAD * em;
  const inches = plan.units === "inch" || plan.units === "foot";
  const words =
    `Dimensions in ${UNIT_WORDS[plan.units]}` +
    (inches ? ", to the nearest 1/32; + or - behind one: a little more, a little less." : ".");
  const lines = wrapText(words, room, 0.9 * em, 2);
  let y = drawn.top - 0.8 * em - (lines.length - 1) * 1.2 * em;
  const title = makeLabel({
    text: fitText(plainText(plan.title) || "Tile plan", room, TITLE_SIZE * em, "bold"),
    role: "title",
    x,
    y: y - 2 * em,
    size: TITLE_SIZE * em,
    anchor: "start",
    bold: true,
  });
  const notes = lines.map((text) => {
    const label = makeLabel({ text, role: "note", x, y, size: 0.9 * em, anchor: "start" });
    y += 1.2 * em;
    return label;
  });
  return [title, ...notes];
}

function grownBox(box: PictureBox, by: number): PictureBox {
  return {
    left: rounded(box.left - by),
    top: rounded(box.top - by),
    right: rounded(box.right + by),
    bottom: rounded(box.bottom + by),
  };
}
