import type { Lay, Opening, Plan, Side, Wall } from "../model/index.js";
import { type Box, encloses, overlaps } from "./box.js";
import { innerSides, layRegion, type Placed, placedBy, standOf } from "./lay-region.js";
import { inPlacingOrder } from "./lay-order.js";
import { regionOf } from "./region.js";
import type { Region, Unsettled } from "./solved.js";

/** Which lay of a wall settles what the wall leaves free. */
export interface FreeLays {
  /** The numbers of the openings that a lay settles, by its name. */
  readonly openings: ReadonlyMap<string, readonly number[]>;
  /** The name of the lay that settles the height at which the tile stops; null where none does, or it is stated. */
  readonly stop: string | null;
  readonly unsettled: readonly Unsettled[];
}

/** What of a wall a lay has, and the sides at which it doesn't end with the wall. */
interface Stretch {
  readonly lay: Lay;
  readonly region: Region;
  readonly inner: readonly Side[];
}

/**
 * Tells which lay alone can settle what a wall of several lays leaves free: the one in which all of an
 * opening's range lies, and the only one that reaches up to the height at which the tile stops.
 */
export function freeLays(plan: Plan, wall: Wall): FreeLays {
  const stretches = stretchesOf(plan, wall);
  const openings = new Map<string, number[]>();
  const unsettled: Unsettled[] = [];
  wall.openings.forEach(({ name, free }, i) => {
    if (!free.x && !free.y) return;
    const found = layRound(plan, wall, i, stretches);
    if ("lay" in found) openings.set(found.lay, [...(openings.get(found.lay) ?? []), i]);
    else unsettled.push({ wall: wall.name, opening: name, ...found });
  });
  if (!wall.stop) return { openings, stop: null, unsettled };
  const tops = topLays(plan, wall, stretches);
  if (tops.length === 1) return { openings, stop: tops[0]!, unsettled };
  const why = tops.length > 1 ? "spans" : "outside";
  unsettled.push({ wall: wall.name, opening: null, lays: tops, why });
  return { openings, stop: null, unsettled };
}

function stretchesOf(plan: Plan, wall: Wall): Stretch[] {
  const placed: Placed[] = [];
  return inPlacingOrder(wall.lays).map((lay) => {
    const joint = lay.joint.min;
    const plot = { plan, wall, lay, placed: [...placed] };
    const region = layRegion(plot, joint);
    placed.push(placedBy(lay, { joint, region, stand: standOf(plot, joint) }));
    return { lay, region, inner: innerSides(region, regionOf(plan, wall, joint)) };
  });
}

/** The lays whose tile ends higher where the wall's may. */
function topLays(plan: Plan, wall: Wall, stretches: readonly Stretch[]): string[] {
  const highest = stretchesOf(plan, { ...wall, size: { ...wall.size, up: wall.stop!.max } });
  return stretches
    .filter(({ region }, i) => highest[i]!.region.bounds.top > region.bounds.top)
    .map(({ lay }) => lay.name);
}

type Round = { readonly lay: string } | Pick<Unsettled, "lays" | "why">;

/** The lay that has all that an opening may take. */
function layRound(plan: Plan, wall: Wall, i: number, stretches: readonly Stretch[]): Round {
  const opening = wall.openings[i]!;
  const met = stretches.filter((stretch) => meets(stretch, reachOf(plan, wall, stretch.lay, i)));
  const names = (all: readonly Stretch[]) => all.map(({ lay }) => lay.name);
  const [round] = met;
  if (!round) return { lays: [], why: "outside" };
  if (met.length > 1 || !isWithin(round, reachOf(plan, wall, round.lay, i))) {
    return { lays: names(met), why: "spans" };
  }
  const moved = stretches.filter(
    ({ lay }) => startsFrom(lay, opening) && (lay !== round.lay || isCounted(lay)),
  );
  return moved.length > 0 ? { lays: names(moved), why: "moves" } : { lay: round.lay.name };
}

/** All that an opening may take of a wall; with a frame that depends on the lay's joint. */
function reachOf(plan: Plan, wall: Wall, lay: Lay, i: number): Box {
  const { box } = regionOf(plan, wall, lay.joint.min).takeaways[i]!;
  const { at, free } = wall.openings[i]!;
  return {
    left: box.left + (free.x ? free.x.min - at.x : 0),
    bottom: box.bottom + (free.y ? free.y.min - at.y : 0),
    right: box.right + (free.x ? free.x.max - at.x : 0),
    top: box.top + (free.y ? free.y.max - at.y : 0),
  };
}

function patchesOf({ region }: Stretch): readonly Box[] {
  return region.takeaways.filter(({ opening }) => opening.kind === "lay").map(({ box }) => box);
}

/** Whether a lay has tile where an opening may stand. */
function meets(stretch: Stretch, reach: Box): boolean {
  const { region } = stretch;
  return overlaps(region.bounds, reach) && !patchesOf(stretch).some((box) => encloses(box, reach));
}

/** Whether what an opening may take ends with the lay only where the wall does. */
function isWithin(stretch: Stretch, reach: Box): boolean {
  const { region, inner } = stretch;
  const { bounds } = region;
  const far = {
    left: inner.includes("left") ? bounds.left : -Infinity,
    bottom: inner.includes("bottom") ? bounds.bottom : -Infinity,
    right: inner.includes("right") ? bounds.right : Infinity,
    top: inner.includes("top") ? bounds.top : Infinity,
  };
  return encloses(far, reach) && !patchesOf(stretch).some((box) => overlaps(box, reach));
}

function startsFrom({ across, up }: Lay, opening: Opening): boolean {
  const centre = across && "centre" in across ? across.centre : null;
  return (
    (centre?.on === "opening" && centre.opening.name === opening.name) ||
    (up?.kind === "at-opening" && up.opening.name === opening.name)
  );
}

/** Whether where a lay ends hangs from where it starts. */
function isCounted({ area }: Lay): boolean {
  return area !== null && area.courses !== null;
}
