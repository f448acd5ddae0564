import type { Lay, Plan, Wall, Wish } from "../model/index.js";
import type { Chosen } from "./choose/index.js";
import { carryOn, settleLay } from "./carry-start.js";
import { chooseFor } from "./choose-lay.js";
import { type FreeLays, freeLays } from "./free-lays.js";
import { inPlacingOrder } from "./lay-order.js";
import { layRegion, type LayPlot } from "./lay-region.js";
import { layWall, plotFor } from "./lay-wall.js";
import {
  layRoom,
  movedOpenings,
  settle,
  settledAcross,
  settledLay,
  settledUp,
} from "./room/index.js";
import type { RoomChoice, SolvedWall } from "./solved.js";

/** A wall laid, and how what it leaves free was settled. */
export interface SettledLays {
  readonly laid: SolvedWall;
  readonly room: RoomChoice;
}

type Starts = ReadonlyMap<string, Chosen>;

/** A wall as far as it is settled, with the starts of its lays. */
interface Standing {
  readonly wall: Wall;
  readonly starts: Starts;
}

/**
 * Lays a wall of several lays that leaves places or its height free. Lay by lay, in the order of their
 * places: each settles what lies in it alone, with its start and for the wishes that speak of it.
 */
export function settleLays(
  plan: Plan,
  asked: Wall,
  wishes: readonly Wish[],
  solved: ReadonlyMap<string, SolvedWall>,
): SettledLays {
  const free = freeLays(plan, asked);
  let standing: Standing = { wall: asked, starts: new Map() };
  let [weighed, capped] = [0, false];
  for (const { name } of inPlacingOrder(asked.lays)) {
    const { wall, starts } = standing;
    const plot = plotFor(plan, wall, name, (each) => starts.get(each.lay.name)!);
    const own = freeIn(free, plot.lay);
    if (own.openings.length === 0 && !own.stop) {
      const chosen = chooseFor(plot, solved);
      standing = { wall, starts: new Map([...starts, [name, chosen]]) };
      continue;
    }
    const laid = searchLay({ ...plot, lay: settleLay(plot, solved) }, own, wishes);
    weighed += laid.weighed;
    capped ||= laid.capped;
    const chosen = carryOn(plot, laid.chosen, solved);
    standing = moved(standing, laid.wall, own, [name, chosen]);
  }
  const { wall, starts } = standing;
  const laid = layWall(plan, wall, (plot) => starts.get(plot.lay.name)!);
  return { laid, room: { weighed, capped, unsettled: free.unsettled } };
}

/** What a lay has to settle: the numbers of openings, and whether its top is free. */
interface OwnFree {
  readonly openings: readonly number[];
  readonly stop: boolean;
}

function freeIn({ openings, stop }: FreeLays, { name }: Lay): OwnFree {
  return { openings: openings.get(name) ?? [], stop: stop === name };
}

/** A lay's start with all that lies in it, searched as a wall of a room is that has this lay alone. */
function searchLay(
  plot: LayPlot,
  own: OwnFree,
  wishes: readonly Wish[],
): {
  readonly wall: Wall;
  readonly chosen: Chosen;
  readonly weighed: number;
  readonly capped: boolean;
} {
  const { plan } = plot;
  const alone = wallOfLay(plot, own);
  const held = plan.walls.map((wall) => (wall.name === alone.name ? alone : wall));
  const laid = layRoom(
    { ...plan, walls: held },
    [alone],
    wishesFor(plot, own, wishes),
    (wall, joint) => layRegion({ ...plot, wall, lay: wall.lays[0]! }, joint),
  );
  const wall = laid.plan.walls.find(({ name }) => name === alone.name)!;
  return { wall, chosen: laid.chosen.get(alone.name)!, ...laid.room };
}

/** The wall as if it had this lay alone, and nothing free but what lies in it. */
function wallOfLay({ wall, lay }: LayPlot, own: OwnFree): Wall {
  const openings = wall.openings.map((opening, i) =>
    own.openings.includes(i) ? opening : { ...opening, free: { x: null, y: null } },
  );
  const lays = [settledLay(lay, movedOpenings(wall, { openings }))];
  return { ...wall, stop: own.stop ? wall.stop : null, openings, lays };
}

/** The wishes that a lay alone can meet: courses meet where walls do, and an opening has its wishes from the lay round it. */
function wishesFor(plot: LayPlot, own: OwnFree, wishes: readonly Wish[]): readonly Wish[] {
  const { wall, lay } = plot;
  const { takeaways } = layRegion(plot, lay.joint.min);
  const isRound = ({ wall: name, opening }: { readonly wall: string; readonly opening: string }) =>
    name === wall.name &&
    wall.openings.some(
      (each, i) =>
        each.name === opening &&
        (own.openings.includes(i) || takeaways.some((taken) => taken.opening === each)),
    );
  return wishes.filter(({ wanted }) => {
    if (wanted.kind === "courses-meet") return false;
    if (wanted.kind === "centre") return isRound(wanted.on);
    return wanted.kind !== "whole-at-opening" || isRound(wanted.of);
  });
}

/** What is settled so far, with what a lay settled: starts speak of openings where they stand now. */
function moved(
  { wall, starts }: Standing,
  found: Wall,
  own: OwnFree,
  [name, chosen]: readonly [string, Chosen],
): Standing {
  const places = found.openings.map(({ at }) => at);
  const stop = own.stop ? found.size.up : wall.size.up;
  const next = settle(wall, { stop, places });
  const had = [...starts].map(([each, start]) => [each, follow(start, wall, next)] as const);
  return { wall: next, starts: new Map([...had, [name, follow(chosen, found, next)]]) };
}

function follow(chosen: Chosen, from: Wall, to: Wall): Chosen {
  const openings = movedOpenings(from, to);
  return {
    ...chosen,
    across: settledAcross(chosen.across, openings),
    up: settledUp(chosen.up, openings),
  };
}
