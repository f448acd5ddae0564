import type { Plan } from "../../model/index.js";
import { boxRound, makeLabel } from "../labels.js";
import { rounded } from "../picture.js";
import { plainText } from "../plain-text.js";
import type { Fate, PictureBox, SwatchKind } from "../scene.js";
import { listBlock, type Block, type BlockForm } from "../scene/list-block.js";
import { cautionsBlock } from "../scene/notes.js";
import { placeNotes } from "../scene/place-notes.js";
import { settingOf } from "../scene/setting.js";
import { roomOf, WALL_PAD } from "../scene/wall-scene.js";
import { fitText } from "../text-metrics.js";
import type { ComparedWall, OverlayScene, OverlayWall } from "./overlay-scene.js";
import { overlayWall } from "./overlay-wall.js";

/** Between two walls, and round the picture; in ems. */
const WALL_GAP = 2;
const MARGIN = 1.6;
const TITLE_SIZE = 1.9;
const SWATCH = { across: 2.1, up: 1.05 };

/** One picture of two plans: what was kept, moved, cut differently, came and went. Pure. */
export function buildOverlay(plan: Plan, compared: readonly ComparedWall[]): OverlayScene {
  const shown = compared.map(({ before, after }) => (after ?? before)!.wall);
  const setting = settingOf({ ...plan, walls: shown });
  const { em } = setting;
  const unplaced = compared.map((wall) => overlayWall(wall, setting));
  const { walls, room } = placeWalls(unplaced, em);
  const glazed = shown.some((wall) => wall.openings.some(({ kind }) => kind === "window"));
  const notes = placeNotes(room, em, ({ single }) => [
    ...(walls.length > 0 ? [legendBlock(walls, single)] : []),
    cautionsBlock(glazed, single),
  ]);
  const drawn = boxRound([room, ...notes.labels.map((label) => label.box)])!;
  const title = `${plainText(plan.title) || "Tile plan"}: what changed`;
  const size = TITLE_SIZE * em;
  const heading = makeLabel({
    text: fitText(title, Math.max(drawn.right - drawn.left - 2 * em, 30 * em), size, "bold"),
    role: "title",
    x: drawn.left + WALL_PAD * em,
    y: drawn.top - 1.4 * em,
    size,
    anchor: "start",
    bold: true,
  });
  const all = boxRound([drawn, heading.box])!;
  return {
    title,
    description: walls.map(({ base }) => `${base.title}: ${base.description}`).join(" "),
    view: grown(all, MARGIN * em),
    em,
    walls,
    labels: [heading, ...notes.labels],
    swatches: notes.swatches,
    badges: [],
  };
}

/** Walls side by side on one level line. */
function placeWalls(
  walls: readonly OverlayWall[],
  em: number,
): { readonly walls: OverlayWall[]; readonly room: PictureBox } {
  const rooms = walls.map(({ base }) => roomOf(base, em));
  const level = Math.max(0, ...rooms.map((room) => -room.top));
  const taken: PictureBox[] = [];
  let x = 0;
  const placed = walls.map((wall, i) => {
    const room = rooms[i]!;
    const at = { x: rounded(x - room.left), y: rounded(level) };
    taken.push({
      left: at.x + room.left,
      right: at.x + room.right,
      top: at.y + room.top,
      bottom: at.y + room.bottom,
    });
    x = at.x + room.right + WALL_GAP * em;
    return { ...wall, base: { ...wall.base, at } };
  });
  return { walls: placed, room: boxRound(taken) ?? { left: 0, top: 0, right: 30 * em, bottom: 0 } };
}

const LEGEND: readonly (readonly [Fate | null, string])[] = [
  [null, "kept: same cut, same place"],
  ["moved", "only moved: same cut"],
  ["recut", "cut differently; dashed: as it was"],
  ["fresh", "new piece"],
  ["gone", "gone"],
];

/** What occurs, and nothing else. */
function legendBlock(walls: readonly OverlayWall[], form: BlockForm): Block {
  const { em } = form;
  const occurs = new Set(walls.flatMap(({ groups }) => groups.map(({ fate }) => fate)));
  const rows = LEGEND.filter(([fate]) => occurs.has(fate));
  return listBlock("Legend", rows, form, ([fate, words], { x, y }) => {
    const half = (SWATCH.up * em) / 2;
    const box = {
      left: rounded(x),
      right: rounded(x + SWATCH.across * em),
      top: rounded(y - half),
      bottom: rounded(y + half),
    };
    const kind: SwatchKind = fate ?? "whole";
    return {
      words,
      indent: (SWATCH.across + 0.7) * em,
      role: "note",
      swatches: [{ kind, box }],
      badges: [],
    };
  });
}

function grown(box: PictureBox, by: number): PictureBox {
  return {
    left: rounded(box.left - by),
    top: rounded(box.top - by),
    right: rounded(box.right + by),
    bottom: rounded(box.bottom + by),
  };
}
