import { boxRound } from "../labels.js";
import { rounded } from "../picture.js";
import type { PictureBox, WallScene } from "../scene.js";
import type { InsideNet } from "./inside-scenes.js";
import { WALL_PAD } from "./wall-scene.js";

/** Between two nets, and between the walls and the nets, in ems. */
const GAP = 2;

/** The insides of openings below their walls, side by side in as many rows as the walls' width wants. */
export function placeInsides(
  nets: readonly InsideNet[],
  room: PictureBox,
  em: number,
): { readonly faces: WallScene[]; readonly room: PictureBox } {
  const faces: WallScene[] = [];
  const taken: PictureBox[] = [room];
  const from = room.left + WALL_PAD * em;
  let x = from;
  let y = room.bottom + GAP * em;
  for (const net of nets) {
    const [across, up] = [net.room.right - net.room.left, net.room.bottom - net.room.top];
    if (x > from && x + across > room.right) {
      x = from;
      y = Math.max(...taken.map(({ bottom }) => bottom)) + GAP * em;
    }
    const [dx, dy] = [x - net.room.left, y - net.room.top];
    faces.push(
      ...net.faces.map((face) => ({
        ...face,
        at: { x: rounded(face.at.x + dx), y: rounded(face.at.y + dy) },
      })),
    );
    taken.push({ left: x, top: y, right: x + across, bottom: y + up });
    x += across + GAP * em;
  }
  return { faces, room: boxRound(taken)! };
}
