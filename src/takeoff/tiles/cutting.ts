import type { Box } from "../../solver/index.js";
import type { Demand, Pose } from "./demand.js";
import { ALL_EDGES, type Turns } from "./edges.js";
import type { Face } from "./face.js";
import { type FirstCut, type Kerf, partRest, type Rest } from "./rest.js";
import { RestShelf } from "./rest-shelf.js";

/** A piece where it is cut from. */
export interface Placed {
  readonly tile: number;
  readonly demand: Demand;
  readonly box: Box;
  readonly turns: Turns;
}

/** Tiles as they are cut up, one cut after the other. */
export class Cutting {
  private constructor(
    readonly face: Face,
    readonly placed: Placed[],
    readonly shelf: RestShelf,
    private opened: number,
    private readonly kerfs: Kerf[],
  ) {}

  static of(face: Face): Cutting {
    return new Cutting(face, [], new RestShelf(), 0, []);
  }

  /** How many tiles are cut so far. */
  get tiles(): number {
    return this.opened;
  }

  /** What the saw took so far, in nm², twice over. */
  get doubleKerf(): bigint {
    return this.kerfs.reduce(
      (sum, { width, length }) => sum + 2n * BigInt(width) * BigInt(length),
      0n,
    );
  }

  copy(): Cutting {
    return new Cutting(this.face, [...this.placed], this.shelf.copy(), this.opened, [
      ...this.kerfs,
    ]);
  }

  /** A whole tile, to be cut at once. */
  openTile(): Rest {
    const { across, up } = this.face;
    const box = { left: 0, bottom: 0, right: across, top: up };
    return { tile: this.opened++, box, own: ALL_EDGES };
  }

  /** Cuts a piece from a rest that it fits; returns what is left of it. */
  cut(rest: Rest, demand: Demand, pose: Pose, first: FirstCut): readonly Rest[] {
    const { box, rests, kerfs } = partRest(rest, pose, first, this.face.kerf);
    for (const kerf of kerfs) this.kerfs.push(kerf);
    this.placed.push({ tile: rest.tile, demand, box, turns: pose.turns });
    return rests;
  }
}
