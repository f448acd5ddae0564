import type { Nm } from "../../measure/index.js";
import { latticeOf } from "../lattice.js";
import { acrossOrigin, upOrigin } from "../start.js";
import { ROOM_LOOKS, ROOM_MOST } from "./budget.js";
import { canStand } from "./can-stand.js";
import { constantPlaces } from "./constant-places.js";
import { placesOnMiddles, placesOnTiles, placesTied, reachingOf } from "./free-places.js";
import type { WallFields } from "./wall-fields.js";

/** A place of an opening in one direction, and what the wishes for it there miss. */
export interface PlaceAt {
  readonly at: Nm;
  readonly missed: readonly { readonly place: number; readonly missed: number }[];
}

const NOTHING: PlaceAt["missed"] = [];

/** The places of what may move that are critical for tiles from some origin, in one direction. */
export class PlacesAt {
  private knownConstant: ReadonlyMap<number, readonly Nm[]> | null = null;
  /** The opening that a stated start goes with, where it may move in this direction. */
  readonly tied: number | null;
  private readonly known = new Map<string, readonly PlaceAt[]>();
  private readonly stated = new Map<Nm, Nm>();

  constructor(
    private readonly fields: WallFields,
    private readonly direction: "x" | "y",
    /** Whether what may move has to stay apart from the rest. */
    private readonly isStrict: boolean,
  ) {
    this.tied = this.tiedOpening();
  }

  private get constant(): ReadonlyMap<number, readonly Nm[]> {
    return (this.knownConstant ??= constantPlaces(this.fields, this.direction));
  }

  /** Those of one opening, where it is drawn first: there it is apart from the rest. */
  of(i: number, origin: Nm): readonly PlaceAt[] {
    const key = `${i} ${origin}`;
    const known = this.known.get(key);
    if (known) return known;
    const places = this.placesOf(i, origin).map((at) => this.seen(i, origin, at));
    this.known.set(key, places);
    return places;
  }

  /** Adds the least that each wish for what may move misses with tiles from an origin, wherever that can stand. */
  addLeastMissed(missed: Map<number, number>, origin: Nm): void {
    for (const i of this.fields.wished[this.direction]) {
      for (const { at, missed: each } of this.of(i, origin)) {
        const less = each.filter(({ place, missed: by }) => by < (missed.get(place) ?? Infinity));
        if (less.length === 0 || !this.canStand(i, at)) continue;
        for (const { place, missed: by } of less) missed.set(place, by);
      }
    }
  }

  private canStand(i: number, at: Nm): boolean {
    return !this.isStrict || canStand(this.fields, i, this.direction, at);
  }

  /** A place of an opening with what is missed there by tiles from an origin. */
  seen(i: number, origin: Nm, at: Nm): PlaceAt {
    const axis = this.direction === "x" ? "across" : "up";
    if (!this.fields.isWanted(i, axis)) return { at, missed: NOTHING };
    const lattice = axis === "across" ? this.lattice(origin, 0) : this.lattice(0, origin);
    return { at, missed: this.fields.missesOf(i, axis, lattice, at) };
  }

  /** Where a start that is stated on what may move would be with that at a place. */
  statedAt(at: Nm): Nm {
    // Every start and height of a room is asked for this.
    const known = this.stated.get(at) ?? this.startWith(at);
    this.stated.set(at, known);
    return known;
  }

  private startWith(at: Nm): Nm {
    const { fields, direction } = this;
    const places = fields.drawn.places.map((drawn, i) =>
      i === this.tied ? { ...drawn, [direction]: at } : drawn,
    );
    const { own } = fields.at({ ...fields.drawn, places });
    const { lay } = own.ground;
    return direction === "x"
      ? acrossOrigin(own.ground, lay.across!)
      : upOrigin(own.ground, lay.up!);
  }

  /** The origins of a start that goes with what may move where that is critical by itself. */
  tiedOrigins(): Nm[] {
    if (this.tied === null) return [];
    return this.constant.get(this.tied)!.map((at) => this.statedAt(at));
  }

  private placesOf(i: number, origin: Nm): readonly Nm[] {
    const { fields, direction } = this;
    const opening = fields.wall.openings[i]!;
    const range = opening.free[direction];
    if (!range) return [opening.at[direction]];
    const own = fields.first.own[direction === "x" ? "across" : "up"];
    if (this.tied === i) {
      const tied = placesTied(range, this.statedAt(range.min), own.module, [origin]);
      return tied.filter((at) => (this.statedAt(at) - origin) % own.module === 0);
    }
    const reaching = reachingOf(fields, i, direction === "x" ? "across" : "up");
    const all = [fields.first.own, ...fields.first.under.map(({ field }) => field)];
    const shifts = direction === "x" ? fields.first.own.shifts : [0];
    const origins = shifts.map((shift) => origin + shift);
    const tiles = (range.max - range.min) / own.module + 1;
    fields.effort.cells += ROOM_LOOKS.places * origins.length * tiles * all.length;
    const places = new Set([
      opening.at[direction],
      ...all.flatMap((field) =>
        placesOnTiles(range, reaching, field[direction === "x" ? "across" : "up"], origins),
      ),
      ...(direction === "x" ? placesOnMiddles(range, reaching, own, origin) : []),
      ...this.constant.get(i)!,
    ]);
    return fields.some([...places], ROOM_MOST.places);
  }

  private lattice(x: Nm, y: Nm) {
    return latticeOf(this.fields.lay, this.fields.joint, x, y);
  }

  private tiedOpening(): number | null {
    const { lay, wall, free } = this.fields;
    const { across, up } = lay;
    const opening =
      this.direction === "y"
        ? up?.kind === "at-opening"
          ? up.opening
          : null
        : across && "centre" in across && across.centre.on === "opening"
          ? across.centre.opening
          : null;
    const i = opening === null ? -1 : wall.openings.findIndex(({ name }) => name === opening.name);
    return free[this.direction].includes(i) ? i : null;
  }
}
