import { toMillimetres } from "../../measure/index.js";
import type { Plan, Wish } from "../../model/index.js";
import { wishWords } from "../../rules/index.js";
import {
  type Measured,
  type Reason,
  type RoomOption,
  roomOptions,
  type SolvedPlan,
  type SolvedWall,
  type WishOutcome,
  wishOutcomes,
} from "../../solver/index.js";
import { acrossJson, upJson } from "../start-json.js";
import { roomFigures } from "./room-figures.js";

/** The best few layouts of the room and what becomes of each wish; lengths in mm. null for a plan whose walls are chosen one by one. */
export function roomJson(solved: SolvedPlan): object | null {
  if (!solved.room) return null;
  const { asked, weighed, capped } = solved.room;
  return {
    weighed,
    capped,
    options: roomOptions(solved).map((option) => optionJson(option, asked)),
    wishes: wishOutcomes(solved).map((outcome) => outcomeJson(outcome, asked)),
  };
}

/** A wish and what a layout misses of it. */
export function wishJson(wish: Wish, missed: number, units: Plan["units"]): object {
  const isCount = wish.wanted.kind === "no-cut" || wish.wanted.kind === "few-cuts";
  return {
    wish: wishWords(wish, units),
    wall: wish.wall,
    met: missed === 0,
    missed: isCount ? missed : toMillimetres(missed),
    unit: isCount ? "cuts" : "mm",
  };
}

function outcomeJson({ wish, missed, nearest }: WishOutcome, { wishes, units }: Plan): object {
  return {
    ...wishJson(wish, missed, units),
    nearest: nearest && measuredJson(nearest, wishes, units),
  };
}

function optionJson(option: RoomOption, { wishes, units }: Plan): object {
  const { width, height, cutPieces, tilesNeeded } = roomFigures(option.solved);
  const mm = (nm: number | null): number | null => (nm === null ? null : toMillimetres(nm));
  return {
    reason: reasonJson(option.reason, units),
    had: option.had,
    ...measuredJson(option, wishes, units),
    smallestCut: { width: mm(width), height: mm(height) },
    cutPieces,
    tilesNeeded,
    walls: option.solved.walls.flatMap(wallJson),
  };
}

function reasonJson(reason: Reason, units: Plan["units"]): object {
  if (reason.kind === "ranked") return { kind: reason.kind };
  return { kind: reason.kind, wish: wishWords(reason.wish, units) };
}

function measuredJson(
  { misses, score }: Measured,
  wishes: readonly Wish[],
  units: Plan["units"],
): object {
  return {
    wishes: wishes.map((wish, i) => wishJson(wish, misses[i]!, units)),
    score: {
      ...score,
      imbalance: toMillimetres(score.imbalance),
      jointOver: toMillimetres(score.jointOver),
    },
  };
}

function wallJson(solved: SolvedWall): object[] {
  const { wall, lays } = solved;
  return lays.map((lay) => ({
    name: wall.name,
    lay: lay.lay.name,
    across: acrossJson(solved, lay, lay.across),
    up: upJson(solved, lay, lay.up),
    joint: toMillimetres(lay.joint),
    top: toMillimetres(wall.size.up),
    openings: wall.openings.map(({ name, at }) => ({
      name,
      at: [toMillimetres(at.x), toMillimetres(at.y)],
    })),
  }));
}
