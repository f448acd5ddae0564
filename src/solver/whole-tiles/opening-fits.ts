import type { Nm } from "../../measure/index.js";
import type { Opening } from "../../model/index.js";
import { type Box, overlaps } from "../box.js";
import { courseShift } from "../lattice.js";
import type { SolvedLay, SolvedWall, Takeaway } from "../solved.js";
import { acrossOrigin } from "../start.js";
import { coursesBeside, isOnJoints, type JointsMet, jointsMet, offJoint } from "./joints-met.js";
import { type Fit, movedFit, sizedFit, tilesNear, type TileRow, wholeLength } from "./row-fit.js";

/** Where an opening would take the place of whole tiles, the lay staying as it is. */
export interface OpeningFit {
  readonly at: Opening["at"];
  readonly size: Opening["size"];
  /** How many whole tiles across and courses up it takes the place of. */
  readonly tiles: { readonly across: number; readonly up: number };
  readonly joints: JointsMet;
}

/** A size of an opening that takes the place of so many whole tiles. */
export interface WholeSize {
  readonly tiles: number;
  readonly size: Nm;
}

/** An opening held against the joints of its wall. */
export interface OpeningFits {
  /** Whether each of its sides falls on a joint as it is. */
  readonly isOn: boolean;
  /** The nearest place on the joints for its size; null where its size doesn't let it, or nothing is free. */
  readonly moved: OpeningFit | null;
  /** The nearest whole tiles, and the nearest place for them. */
  readonly sized: OpeningFit | null;
  /** The sizes nearest to its own that take whole tiles, the smallest first. */
  readonly sizes: { readonly across: readonly WholeSize[]; readonly up: readonly WholeSize[] };
}

/**
 * Works back from the tile to an opening: where it would have all four sides on joints. What it
 * takes counts, with its movement joint or its frame. A lay that starts from this very opening goes
 * with it, so there only its size can change. null for what stands on the floor or hangs, and for an opening that isn't within
 * the tile on all sides.
 */
export function openingFits(
  wall: SolvedWall,
  lay: SolvedLay,
  opening: Opening,
): OpeningFits | null {
  const taken = wall.region.takeaways.find((takeaway) => takeaway.opening === opening);
  if (!taken || opening.reaches !== null || !isWithin(taken.box, lay.region.bounds)) return null;
  const fitting = new Fitting(wall, lay, taken);
  return {
    isOn: isOnJoints(lay, taken.box),
    moved: fitting.fit("moved"),
    sized: fitting.fit("sized"),
    sizes: { across: fitting.sizes("across"), up: fitting.sizes("up") },
  };
}

class Fitting {
  private readonly opening: Opening;
  private readonly box: Box;
  /** How much wider than the opening its takeaway is, at each side. */
  private readonly margin: Nm;

  constructor(
    private readonly wall: SolvedWall,
    private readonly lay: SolvedLay,
    { opening, box }: Takeaway<Opening>,
  ) {
    this.opening = opening;
    this.box = box;
    this.margin = opening.at.x - box.left;
  }

  fit(how: "moved" | "sized"): OpeningFit | null {
    const up = this.fitUp(how);
    // Which head joints are beside it depends on its height.
    const across = up && this.fitAcross(how, up);
    if (!across) return null;
    const box = { left: across.from, right: across.to, bottom: up.from, top: up.to };
    const { margin } = this;
    const size = {
      across: box.right - box.left - 2 * margin,
      up: box.top - box.bottom - 2 * margin,
    };
    if (size.across <= 0 || size.up <= 0 || !this.isFree(box)) return null;
    return {
      at: { x: box.left + margin, y: box.bottom + margin },
      size,
      tiles: { across: across.tiles, up: up.tiles },
      joints: jointsMet(this.laidAt(across.origin), box),
    };
  }

  sizes(direction: "across" | "up"): WholeSize[] {
    const { opening, margin, lay } = this;
    const row = { face: lay.lattice.face[direction], joint: lay.joint };
    return tilesNear(row, opening.size[direction] + 2 * margin)
      .map((tiles) => ({ tiles, size: wholeLength(row, tiles) - 2 * margin }))
      .filter(({ size }) => size > 0)
      .sort((a, b) => a.tiles - b.tiles);
  }

  private fitUp(how: "moved" | "sized"): Fit | null {
    const { box, lay } = this;
    const { lattice, up } = lay;
    const row: TileRow = { face: lattice.face.up, joint: lattice.joint, origins: [lattice.y] };
    const taken = { from: box.bottom, to: box.top };
    const { bottom, top } = this.lay.region.bounds;
    if (up.kind !== "at-opening" || up.opening !== this.opening) {
      const room = { from: bottom, to: top };
      return how === "moved" ? movedFit(row, taken, room) : sizedFit(row, taken, room);
    }
    if (how === "moved") {
      const isOn = offJoint(lay, box, "bottom") === 0 && offJoint(lay, box, "top") === 0;
      return isOn ? { ...taken, tiles: tilesNear(row, taken.to - taken.from)[0]! } : null;
    }
    const tiles = tilesNear(row, taken.to - taken.from)[0]!;
    const length = wholeLength(row, tiles);
    // The courses go on from the side that they start at.
    return up.relation === "under"
      ? { from: taken.from, to: taken.from + length, tiles }
      : { from: taken.to - length, to: taken.to, tiles };
  }

  /** `origin` is where the lay then has its course 1's tile. */
  private fitAcross(how: "moved" | "sized", up: Fit): (Fit & { readonly origin: Nm }) | null {
    const { box, lay } = this;
    const { lattice, across } = lay;
    const taken = { from: box.left, to: box.right };
    const shifts = this.shiftsBeside(up);
    const origins = shifts.map((shift) => lattice.x + shift);
    const row: TileRow = { face: lattice.face.across, joint: lattice.joint, origins };
    const goesAlong =
      "centre" in across &&
      across.centre.on === "opening" &&
      across.centre.opening === this.opening;
    if (!goesAlong) {
      const { left, right } = this.lay.region.bounds;
      const room = { from: left, to: right };
      const fit = how === "moved" ? movedFit(row, taken, room) : sizedFit(row, taken, room);
      return fit && { ...fit, origin: lattice.x };
    }
    if (how === "sized") return this.sizedOnCentre(row, shifts, across.kind);
    const moved = { ...box, bottom: up.from, top: up.to };
    const isOn = offJoint(lay, moved, "left") === 0 && offJoint(lay, moved, "right") === 0;
    const tiles = tilesNear(row, taken.to - taken.from)[0]!;
    return isOn ? { ...taken, tiles, origin: lattice.x } : null;
  }

  /** A lay that is centred on the opening: its middle stays, and the number of tiles must suit it. */
  private sizedOnCentre(
    row: TileRow,
    shifts: readonly Nm[],
    kind: "tile" | "joint",
  ): (Fit & { readonly origin: Nm }) | null {
    const { opening, margin, wall, lay } = this;
    const { at, size } = opening;
    const module = row.face + row.joint;
    for (const tiles of tilesNear(row, size.across + 2 * margin)) {
      const length = wholeLength(row, tiles);
      const spare = 2 * at.x + size.across - (length - 2 * margin);
      // Half a nanometre goes to either side.
      for (const x of [Math.floor(spare / 2), Math.ceil(spare / 2)]) {
        const sized = {
          ...opening,
          at: { ...at, x },
          size: { ...size, across: length - 2 * margin },
        };
        const ground = { wall: wall.wall, region: lay.region, lay: lay.lay, joint: lay.joint };
        const centre = { on: "opening", opening: sized } as const;
        const origin = acrossOrigin(ground, { kind, centre });
        const from = x - margin;
        const isOn = shifts.some((shift) => (from - origin - shift - row.face) % module === 0);
        if (isOn) return { from, to: from + length, tiles, origin };
      }
    }
    return null;
  }

  /** How far each phase of the bond is shifted that a course beside the opening has. */
  private shiftsBeside({ from, to }: Fit): Nm[] {
    const { lattice } = this.lay;
    const beside = coursesBeside(this.lay, { bottom: from, top: to });
    const numbers = beside.slice(0, lattice.q).map(({ number }) => number);
    return numbers.map((number) => courseShift(lattice, number));
  }

  private laidAt(x: Nm): Pick<SolvedLay, "lattice" | "courses"> {
    const { lattice, courses } = this.lay;
    return { lattice: { ...lattice, x }, courses };
  }

  /** Whether it stays within the tile, and clear of all other openings and holes. */
  private isFree(box: Box): boolean {
    const { bounds, takeaways, roundHoles, steps } = this.lay.region;
    const others = takeaways.filter(({ opening }) => opening !== this.opening);
    return (
      isWithin(box, bounds) &&
      !steps.some((step) => overlaps(step, box)) &&
      ![...others, ...roundHoles].some((other) => overlaps(other.box, box))
    );
  }
}

function isWithin(box: Box, bounds: Box): boolean {
  return (
    box.left > bounds.left &&
    box.right < bounds.right &&
    box.bottom > bounds.bottom &&
    box.top < bounds.top
  );
}
