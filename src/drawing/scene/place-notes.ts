import { movedLabel } from "../labels.js";
import { rounded } from "../picture.js";
import type { PictureBox } from "../scene.js";
import type { Block, BlockForm } from "./list-block.js";
import { WALL_PAD } from "./wall-scene.js";

/** What the notes come to, once placed. */
export type PlacedNotes = Pick<Block, "labels" | "swatches" | "badges">;

/** How the blocks of notes are to be shaped: the findings may take several columns. */
export interface NoteForms {
  readonly single: BlockForm;
  readonly findings: BlockForm;
}

/** Between blocks, in ems. */
const GAP = 2.4;
/** Notes stand beside walls that are no wider than this times their height, else below them. */
const BESIDE_UP_TO = 1.15;
const BESIDE_WIDTH = 25;
const BELOW_WIDTH = 26;

/** Notes in a column beside tall walls, in columns below wide ones. */
export function placeNotes(
  room: PictureBox,
  em: number,
  blocksOf: (forms: NoteForms) => readonly Block[],
): PlacedNotes {
  const gap = GAP * em;
  const across = room.right - room.left;
  const beside = across <= BESIDE_UP_TO * (room.bottom - room.top);
  const width = (beside ? BESIDE_WIDTH : BELOW_WIDTH) * em;
  const columns = Math.floor((across + gap) / (width + gap));
  // The legend and the cautions take one column each.
  const forFindings = beside ? 1 : Math.max(1, columns - 2);
  const single = { em, width, columns: 1 };
  const blocks = blocksOf({ single, findings: { em, width, columns: forFindings } });
  let x = beside ? room.right + gap : room.left + WALL_PAD * em;
  let y = beside ? room.top + em : room.bottom + gap;
  const placed = blocks.map((block) => {
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

/** The block elsewhere. */
export function movedBlock(block: Block, dx: number, dy: number): PlacedNotes {
  return {
    labels: block.labels.map((label) => movedLabel(label, dx, dy)),
    swatches: block.swatches.map(({ kind, box }) => ({ kind, box: movedBox(box, dx, dy) })),
    badges: block.badges.map((badge) => ({
      ...badge,
      middle: { x: rounded(badge.middle.x + dx), y: rounded(badge.middle.y + dy) },
    })),
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
