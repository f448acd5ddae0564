import type { Diagnostic } from "../../model/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import { boxRound, makeLabel, movedLabel } from "../labels.js";
import { rounded } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { Badge, Label, PictureBox, Scene, Swatch, WallScene } from "../scene.js";
import { fitText, wrapText } from "../text-metrics.js";
import { findingGroups } from "./finding-groups.js";
import { headingLines } from "./headings.js";
import { cautionsBlock, findingsBlock, legendBlock, type Block } from "./notes.js";
import { settingOf, type Setting } from "./setting.js";
import { roomOf, wallScene } from "./wall-scene.js";

/** Between two walls, round the picture, and between blocks of notes; in ems. */
const WALL_GAP = 2;
const MARGIN = 1.6;
const BLOCK_GAP = 2.4;
/** Notes stand beside walls that are no wider than this times their height, else below them. */
const BESIDE_UP_TO = 1.15;
const BESIDE_WIDTH = 25;
const BELOW_WIDTH = 26;
const TITLE_SIZE = 1.9;

/**
 * The scene of a solved plan with its findings. Pure: the same plan and findings give the same
 * scene, to the last digit.
 */
export function buildScene(solved: SolvedPlan, diagnostics: readonly Diagnostic[]): Scene {
  const setting = settingOf(solved.plan);
  const { groups, untold } = findingGroups(
    solved.walls.map((each) => each.wall.name),
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
  const { walls, room } = placeWalls(unplaced, setting.em);
  const several = walls.length > 1;
  const glazed = walls.some((wall) => wall.openings.some((opening) => opening.kind === "window"));
  const notes = placeNotes(room, setting.em, (width) => [
    ...(walls.length > 0 ? [legendBlock(unplaced, width, setting)] : []),
    ...(groups.length > 0 ? [findingsBlock(groups, untold, several, width, setting)] : []),
    cautionsBlock(glazed, width, setting),
  ]);
  const drawn = boxRound([room, ...notes.labels.map((label) => label.box)])!;
  const titles = planTitles(solved, drawn, setting);
  const all = boxRound([drawn, ...titles.map((label) => label.box)])!;
  const title = plainText(solved.plan.title) || "Tile plan";
  return {
    title,
    description: walls.map((wall) => `${wall.title}: ${wall.description}`).join(" "),
    view: grownBox(all, MARGIN * setting.em),
    em: setting.em,
    walls,
    labels: [...titles, ...notes.labels],
    swatches: notes.swatches,
    badges: notes.badges,
  };
}

/** Walls side by side on one level line. */
function placeWalls(
  scenes: readonly Omit<WallScene, "at">[],
  em: number,
): { walls: WallScene[]; room: PictureBox } {
  const rooms = scenes.map((scene) => roomOf(scene, em));
  const level = Math.max(0, ...rooms.map((room) => -room.top));
  const walls: WallScene[] = [];
  const taken: PictureBox[] = [];
  let x = 0;
  scenes.forEach((scene, i) => {
    const room = rooms[i]!;
    const at = { x: rounded(x - room.left), y: rounded(level) };
    walls.push({ ...scene, at });
    taken.push({
      left: at.x + room.left,
      right: at.x + room.right,
      top: at.y + room.top,
      bottom: at.y + room.bottom,
    });
    x = at.x + room.right + WALL_GAP * em;
  });
  const room = boxRound(taken) ?? { left: 0, top: 0, right: 30 * em, bottom: 0 };
  return { walls, room };
}

/** Notes in a column beside tall walls, in columns below wide ones. */
function placeNotes(
  room: PictureBox,
  em: number,
  blocksOf: (width: number) => readonly Block[],
): { labels: Label[]; swatches: Swatch[]; badges: Badge[] } {
  const gap = BLOCK_GAP * em;
  const beside = room.right - room.left <= BESIDE_UP_TO * (room.bottom - room.top);
  const width = (beside ? BESIDE_WIDTH : BELOW_WIDTH) * em;
  let x = beside ? room.right + gap : room.left + em;
  let y = beside ? room.top + em : room.bottom + gap;
  const placed = blocksOf(width).map((block) => {
    const moved = movedBlock(block, x, y);
    if (beside) y += block.height + gap;
    else x += block.width + gap;
    return moved;
  });
  return {
    labels: placed.flatMap((block) => block.labels),
    swatches: placed.flatMap((block) => block.swatches),
    badges: placed.flatMap((block) => block.badges),
  };
}

function movedBlock(
  block: Block,
  dx: number,
  dy: number,
): Pick<Block, "labels" | "swatches" | "badges"> {
  return {
    labels: block.labels.map((label) => movedLabel(label, dx, dy)),
    swatches: block.swatches.map(({ kind, box }) => ({ kind, box: movedBox(box, dx, dy) })),
    badges: block.badges.map((badge) => ({
      ...badge,
      middle: { x: rounded(badge.middle.x + dx), y: rounded(badge.middle.y + dy) },
    })),
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
  const x = drawn.left + em;
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

function movedBox(box: PictureBox, dx: number, dy: number): PictureBox {
  return {
    left: rounded(box.left + dx),
    right: rounded(box.right + dx),
    top: rounded(box.top + dy),
    bottom: rounded(box.bottom + dy),
  };
}
