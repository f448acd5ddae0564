import { boxRound } from "../labels.js";
import { rounded } from "../picture.js";
import type { PictureBox, WallScene } from "../scene.js";
import type { Setting } from "./setting.js";
import { roomOf } from "./wall-scene.js";

/** Between two walls and between two rows, in ems. */
const GAP = 2;

/** Walls in their rows, those of a row side by side on one level line. */
export function placeWalls(
  scenes: readonly Omit<WallScene, "at">[],
  { em, rows }: Pick<Setting, "em" | "rows">,
): { walls: WallScene[]; room: PictureBox } {
  const walls: WallScene[] = [];
  const taken: PictureBox[] = [];
  let top = 0;
  let next = 0;
  for (const count of rows) {
    const row = scenes.slice(next, next + count);
    next += count;
    const rooms = row.map((scene) => roomOf(scene, em));
    const level = rounded(top + Math.max(0, ...rooms.map((room) => -room.top)));
    let x = 0;
    for (const [i, scene] of row.entries()) {
      const room = rooms[i]!;
      const at = { x: rounded(x - room.left), y: level };
      walls.push({ ...scene, at });
      taken.push({
        left: at.x + room.left,
        right: at.x + room.right,
        top: at.y + room.top,
        bottom: at.y + room.bottom,
      });
      x = at.x + room.right + GAP * em;
    }
    top = Math.max(top, ...taken.map((room) => room.bottom)) + GAP * em;
  }
  const room = boxRound(taken) ?? { left: 0, top: 0, right: 30 * em, bottom: 0 };
  return { walls, room };
}
