import type { Diagnostic } from "../../model/index.js";
import { type SolvedPlan, type SolvedWall, surfacesOf } from "../../solver/index.js";
import { boxRound } from "../labels.js";
import { rounded } from "../picture.js";
import type { LabelRole, PictureBox, Scene, WallScene } from "../scene.js";
import { preferred } from "./arrangement.js";
import { findingGroups } from "./finding-groups.js";
import { insideNets } from "./inside-scenes.js";
import type { Block } from "./list-block.js";
import { findingsBlock, legendBlock } from "./notes.js";
import { movedBlock } from "./place-notes.js";
import { placeInsides } from "./place-insides.js";
import { placeWalls } from "./place-walls.js";
import { settingOf } from "./setting.js";
import { wallScene } from "./wall-scene.js";

/** A sheet of paper shows text that can be read at arm's length when the wall is no more than this. */
const WALL_EMS_ACROSS = 36;
const WALL_EMS_UP = 46;
/** The notes' columns, and how much of them stands beside a narrow wall. */
const NOTES_WIDTH = 26;
const PAPER_EMS_ACROSS = 62;
const GAP = 2;

/** What a sheet says itself, over the picture. */
const ON_THE_SHEET: ReadonlySet<LabelRole> = new Set(["heading", "note"]);

/**
 * The scene of one wall for a sheet of paper: with larger text than a screen's, and without the
 * titles and cautions that the sheet prints itself.
 */
export function buildWallScene(
  { plan }: SolvedPlan,
  solved: SolvedWall,
  diagnostics: readonly Diagnostic[],
): Scene {
  const { wall } = solved;
  const em = emFor(solved);
  const setting = { ...settingOf(plan, [wall]), em, rows: [1] };
  const names = surfacesOf([solved]).map((each) => each.wall.name);
  const { groups, untold } = findingGroups(names, diagnostics);
  const own = groups.filter((group) => group.wall === wall.name);
  const whole = wallScene(solved, own, 0, setting);
  const labels = whole.labels.filter(({ role }) => !ON_THE_SHEET.has(role));
  const bare: Omit<WallScene, "at"> = { ...whole, labels };
  const standing = placeWalls([bare], setting);
  const nets = insideNets(solved, groups, true, setting);
  const { faces, room } = placeInsides(nets, standing.room, em);
  const across = room.right - room.left;
  const beside = across + (GAP + NOTES_WIDTH) * em <= PAPER_EMS_ACROSS * em;
  const columns = beside ? 1 : 2;
  const form = { em, width: NOTES_WIDTH * em, columns };
  const blocks = [
    legendBlock([bare, ...faces], form),
    ...(groups.length > 0 ? [findingsBlock(groups, untold, false, form)] : []),
  ];
  const notes = placed(blocks, room, beside, em);
  const drawn = boxRound([room, ...notes.labels.map(({ box }) => box)])!;
  return {
    title: whole.title,
    description: whole.description,
    view: grown(drawn, 0.4 * em),
    em,
    walls: [...standing.walls, ...faces],
    ...notes,
  };
}

function emFor({ wall: { size } }: SolvedWall): number {
  const across = size.across / 1e6 / WALL_EMS_ACROSS;
  return preferred(Math.max(across, size.up / 1e6 / WALL_EMS_UP));
}

/** Blocks under each other: beside the wall from its top, or below it. */
function placed(
  blocks: readonly Block[],
  room: PictureBox,
  beside: boolean,
  em: number,
): Pick<Scene, "labels" | "swatches" | "badges"> {
  const x = beside ? room.right + GAP * em : room.left + em;
  let y = beside ? room.top + GAP * em : room.bottom + em;
  const moved = blocks.map((block) => {
    const at = movedBlock(block, x, y);
    y += block.height + GAP * em;
    return at;
  });
  return {
    labels: moved.flatMap(({ labels }) => labels),
    swatches: moved.flatMap(({ swatches }) => swatches),
    badges: moved.flatMap(({ badges }) => badges),
  };
}

function grown({ left, top, right, bottom }: PictureBox, by: number): PictureBox {
  return {
    left: rounded(left - by),
    top: rounded(top - by),
    right: rounded(right + by),
    bottom: rounded(bottom + by),
  };
}
