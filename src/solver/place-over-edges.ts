import type { Plan, Wall, Wish } from "../model/index.js";
import { chooseFor } from "./choose-lay.js";
import type { Chosen } from "./choose/index.js";
import { layRegion, plotOf } from "./lay-region.js";
import { layWall } from "./lay-wall.js";
import { placeSpanning, settle, type SpannedLay } from "./room/index.js";
import { asSettled } from "./start.js";

/** A wall whose lays are chosen for, as the plan has it and settled. */
export interface ChosenWall {
  readonly asked: Wall;
  readonly wall: Wall;
  readonly starts: ReadonlyMap<string, Chosen>;
}

/** A wall with openings where they were placed. */
export interface PlacedOver {
  readonly wall: Wall;
  /** The names of the openings that were. */
  readonly placed: readonly string[];
  /** Whether a better layout may be left: places are found for starts, and starts for places. */
  readonly capped: boolean;
}

/**
 * Places openings that may lie over the edge between lays, one after the other, for all lays of their wall with their tiles
 * where they were chosen. `names` are the openings'; the rest of the wall stays as it is asked for.
 */
export function placeOverEdges(
  plan: Plan,
  { asked, wall, starts }: ChosenWall,
  names: readonly string[],
  wishes: readonly Wish[],
): PlacedOver {
  if (names.length === 0) return { wall: asked, placed: [], capped: false };
  const lays = laysOf(plan, wall, starts);
  // Where all starts are stated, the place is all that is chosen.
  let capped = asked.lays.some(({ across, up, joint }) => !across || !up || joint.min < joint.max);
  const placed: string[] = [];
  let [standing, found] = [wall, asked];
  for (const [i, { name }] of asked.openings.entries()) {
    const place = names.includes(name) ? placeSpanning(plan, standing, i, lays, wishes) : null;
    if (!place) continue;
    placed.push(name);
    capped ||= place.capped;
    [standing, found] = [movedTo(standing, i, place.at), movedTo(found, i, place.at)];
  }
  return { wall: found, placed, capped };
}

function movedTo(wall: Wall, i: number, at: Wall["openings"][number]["at"]): Wall {
  const places = wall.openings.map((opening, j) => (j === i ? at : opening.at));
  return settle(wall, { stop: wall.size.up, places });
}

/** The lays of a wall with their tiles where they were chosen. */
function laysOf(plan: Plan, wall: Wall, starts: ReadonlyMap<string, Chosen>): SpannedLay[] {
  const laid = layWall(plan, wall, (plot) => {
    const start = starts.get(plot.lay.name);
    if (!start) return chooseFor(plot, new Map());
    return { ...start, across: asSettled(plot.lay).across ?? start.across };
  });
  return laid.lays.map((each) => {
    const { placed } = plotOf(plan, laid, each);
    return {
      lay: each.lay,
      lattice: each.lattice,
      tiledAt: (at, joint) => layRegion({ plan, wall: at, lay: at.lays[0]!, placed }, joint),
    };
  });
}
