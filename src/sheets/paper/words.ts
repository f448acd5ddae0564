import { plainText } from "../../drawing/index.js";
import {
  type Bond,
  type Edge,
  edgeTrim,
  type Opening,
  type OutsideCorner,
  type Side,
  type Tile,
  type Trim,
  type Wall,
} from "../../model/index.js";
import { acrossWords, upWords } from "../start-words.js";
import { type LayPatch, type SolvedLay, surfacesOf } from "../../solver/index.js";
import type { Ground } from "./ground.js";

/** The title of a part of the plan, or its name where it has none. */
export function titleOf({ title, name }: Wall | Tile | Trim): string {
  return plainText(title) || plainText(name);
}

export function wallTitle({ solved }: Ground, name: string): string {
  const wall = surfacesOf(solved.walls).find((each) => each.wall.name === name)?.wall;
  return wall ? titleOf(wall) : plainText(name);
}

/** `window sash`. */
export function openingWords({ kind, name }: Opening | LayPatch): string {
  return `${kind} ${plainText(name)}`;
}

/** `ceiling, soft joint 1/8 in`. */
export function edgeWords(ground: Ground, edge: Edge): string {
  const { joint } = edge;
  const meeting = meetingWords(ground, edge);
  if (!joint || joint.width === 0) return meeting;
  const kind = joint.kind === "movement" ? "soft joint" : "grout joint";
  return `${meeting}, ${kind} ${ground.length(joint.width)}`;
}

function meetingWords(ground: Ground, { meets }: Edge): string {
  switch (meets.kind) {
    case "free":
      return meets.trim ? `free end with ${titleOf(meets.trim)}` : "free end";
    case "corner": {
      const other = wallTitle(ground, meets.wall);
      return meets.lap === "under"
        ? `corner, covered by the tile of ${other}`
        : `corner, covers the end of ${other}`;
    }
    case "outside":
      return `outside corner, ${outsideWords(ground, meets)}`;
    case "wall":
      return "another wall";
    default:
      return meets.kind;
  }
}

function outsideWords(ground: Ground, meets: OutsideCorner): string {
  const other = wallTitle(ground, meets.wall);
  if (meets.lap === "under") return `ends behind the tile of ${other}`;
  if (meets.lap === "mitre") return `mitred with ${other}`;
  const trim = edgeTrim(meets);
  return `covers the end of ${other}${trim ? `, with ${titleOf(trim)}` : ", its end shows"}`;
}

/** What a setter calls that side of a wall. */
export function sideWords({ side, meets }: Edge): string {
  if (side === "left" || side === "right") {
    return meets.kind === "free" ? `${side} end` : `${side} corner`;
  }
  const what = ["wall", "corner", "outside", "free"].includes(meets.kind);
  return what ? side : meets.kind;
}

export function bondWords(bond: Bond): string {
  return bond.kind === "stack" ? "stack bond" : `running bond, ${bond.p}/${bond.q} offset`;
}

/** `tile centred on wall; full course from bottom`. */
export function startWords({ across, up }: SolvedLay, { solved, length }: Ground): string {
  const { units } = solved.plan;
  return [acrossWords(across, units, length), upWords(up, units, length)]
    .map((words) => words.replace(/^(across|up) /, ""))
    .join("; ");
}

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** `left and bottom`, always in one order. */
export function sidesWords(sides: readonly Side[]): string {
  return andList(SIDES.filter((side) => sides.includes(side)));
}

/** `a`, `a and b`, `a, b and c`. */
export function andList(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)!}`;
}
