import type { Nm } from "../../measure/index.js";
import type { Lay, Opening, Plan, Wall, Wish } from "../../model/index.js";
import { encloses, overlaps } from "../box.js";
import type { Effort } from "../choose/effort.js";
import { within } from "../choose/origins.js";
import { lowestCourse, startOf } from "../choose/weigh.js";
import { regionOf } from "../region.js";
import type { Lattice } from "../solved.js";
import { compareCosts, type Cost, sumOf } from "./cost.js";
import { PlacesAt } from "./places-at.js";
import { settle } from "./settle.js";
import { noCost, type TiledAt, type Wanting, wantingOf } from "./wanting.js";
import { WallFields } from "./wall-fields.js";
import { weighWall } from "./weigh-wall.js";

/** A lay that an opening may meet, with its tiles where they stand. */
export interface SpannedLay {
  readonly lay: Lay;
  readonly lattice: Lattice;
  readonly tiledAt: TiledAt;
}

/** Where an opening came to stand. */
export interface SpanningPlace {
  readonly at: Opening["at"];
  /** Whether a better place may be left: both directions were tried in turn, or not all places were. */
  readonly capped: boolean;
}

/** After so many turns an opening that is free in both directions stays. */
const MOST_TURNS = 8;

/**
 * Finds the best place of an opening whose range reaches over the edge between lays, for all of them, with their tiles where
 * they stand. Free in one direction, it is the best of all; free in both it is the best along each. null where it can't stand
 * apart from the rest. `i` is the opening's number.
 */
export function placeSpanning(
  plan: Plan,
  wall: Wall,
  i: number,
  lays: readonly SpannedLay[],
  wishes: readonly Wish[],
): SpanningPlace | null {
  return new Spanning(plan, wall, i, lays, wishes).best();
}

class Spanning {
  private readonly effort: Effort = { cells: 0 };
  private readonly lays: readonly {
    readonly lay: Lay;
    readonly lattice: Lattice;
    readonly wanting: Wanting;
  }[];
  private readonly known = new Map<string, Cost | null>();
  private isThinned = false;

  constructor(
    private readonly plan: Plan,
    private readonly wall: Wall,
    private readonly i: number,
    lays: readonly SpannedLay[],
    wishes: readonly Wish[],
  ) {
    this.lays = lays.map(({ lay, lattice, tiledAt }) => ({
      lay,
      lattice,
      wanting: wantingOf(plan, wishes, tiledAt),
    }));
  }

  best(): SpanningPlace | null {
    const { free, at: drawn } = this.wall.openings[this.i]!;
    const directions = (["x", "y"] as const).filter((direction) => free[direction] !== null);
    let at = drawn;
    for (let turn = 0; turn < MOST_TURNS; turn++) {
      const before = at;
      for (const direction of directions) at = this.bestAlong(direction, at);
      if (at === before) break;
    }
    if (!this.costAt(at)) return null;
    return { at, capped: this.isThinned || directions.length > 1 };
  }

  /** The best place along one direction; the one that it has where none is better. */
  private bestAlong(direction: "x" | "y", from: Opening["at"]): Opening["at"] {
    let [best, cost] = [from, this.costAt(from)];
    for (const place of this.placesAlong(direction)) {
      const at = { ...from, [direction]: place };
      const own = this.costAt(at);
      if (own && (!cost || compareCosts(own, cost) < 0)) [best, cost] = [at, own];
    }
    return best;
  }

  /** The places that are critical for the tiles of some lay, or for what is where it is. */
  private placesAlong(direction: "x" | "y"): Nm[] {
    const places = this.lays.flatMap(({ lay, lattice, wanting }) => {
      const fields = this.fieldsOf(wanting, lay, lattice.joint, this.moving(this.wall));
      const found = new PlacesAt(fields, direction, true).of(this.i, lattice[direction]);
      this.isThinned ||= fields.isThinned;
      return found.map(({ at }) => at);
    });
    return [...new Set(places)].sort((a, b) => a - b);
  }

  /** What all lays cost with the opening at a place; null where it isn't apart from the rest there. */
  private costAt(at: Opening["at"]): Cost | null {
    const key = `${at.x} ${at.y}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const places = this.wall.openings.map((opening, j) => (j === this.i ? at : opening.at));
    const wall = standing(settle(this.wall, { stop: this.wall.size.up, places }));
    const cost = this.isApart(wall) ? this.costOf(wall) : null;
    this.known.set(key, cost);
    return cost;
  }

  private costOf(wall: Wall): Cost {
    return this.lays
      .map(({ lay, lattice: { x, y, joint }, wanting }) => {
        const fields = this.fieldsOf(wanting, lay, joint, wall);
        const { own } = fields.first;
        const start = startOf(
          own,
          within(x, own.across.module, own.across.low),
          lowestCourse(own, y),
        );
        return weighWall(fields, fields.first, start, null)!;
      })
      .reduce(sumOf, noCost(this.lays[0]!.wanting));
  }

  private fieldsOf(wanting: Wanting, lay: Lay, joint: Nm, wall: Wall): WallFields {
    const alone = { ...wall, lays: wall.lays.filter(({ name }) => name === lay.name) };
    return new WallFields(wanting, alone, alone.lays[0]!, joint, this.effort, 1);
  }

  /** The wall with nothing free but the opening. */
  private moving(wall: Wall): Wall {
    const openings = wall.openings.map((each, j) =>
      j === this.i ? each : { ...each, free: { x: null, y: null } },
    );
    return { ...wall, stop: null, openings };
  }

  /** Whether what the opening takes stays inside the wall's tile, clear of what else is there. */
  private isApart(wall: Wall): boolean {
    return this.lays.every(({ lattice: { joint } }) => {
      const { bounds, takeaways, roundHoles, steps } = regionOf(this.plan, wall, joint);
      const { box } = takeaways[this.i]!;
      const others = [
        ...takeaways.filter((_, j) => j !== this.i).map((taken) => taken.box),
        ...roundHoles.map((round) => round.box),
        ...steps,
      ];
      return encloses(bounds, box) && !others.some((other) => overlaps(box, other));
    });
  }
}

/** The wall with nothing free. */
function standing(wall: Wall): Wall {
  const openings = wall.openings.map((each) => ({ ...each, free: { x: null, y: null } }));
  return { ...wall, stop: null, openings };
}
