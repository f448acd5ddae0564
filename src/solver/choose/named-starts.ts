import type { Nm } from "../../measure/index.js";
import type { OwnStart, UpStart, Wall } from "../../model/index.js";
import { acrossOrigin, upOrigin } from "../start.js";
import type { Field } from "./field.js";
import { within } from "./origins.js";

/** The starts across that a plan can name without a figure, the simplest first. */
export function namedAcross(wall: Wall): OwnStart[] {
  const onOpenings = wall.openings.flatMap((opening): OwnStart[] => [
    { kind: "tile", centre: { on: "opening", opening } },
    { kind: "joint", centre: { on: "opening", opening } },
  ]);
  return [
    { kind: "tile", centre: { on: "wall" } },
    { kind: "joint", centre: { on: "wall" } },
    ...onOpenings,
    { kind: "full-tile", from: "left" },
    { kind: "full-tile", from: "right" },
  ];
}

/** The starts up that a plan can name without a figure, the simplest first. */
export function namedUp(wall: Wall): UpStart[] {
  const atOpenings = wall.openings.flatMap((opening): UpStart[] => [
    { kind: "at-opening", relation: "under", opening },
    { kind: "at-opening", relation: "over", opening },
  ]);
  return [
    { kind: "full-course", from: "bottom" },
    { kind: "full-course", from: "top" },
    ...atOpenings,
  ];
}

/** A start by name, and its rank: the lower, the simpler to say. */
export interface Said<Start> {
  readonly start: Start;
  readonly rank: number;
}

/** Says a start across that has a tile's left edge at `x`; exact to the nanometre. */
export function sayAcross(field: Field, x: Nm): Said<OwnStart> {
  const { ground, across } = field;
  const named = namedAcross(ground.wall);
  const rank = named.findIndex((start) => isApart(acrossOrigin(ground, start), x, across.module));
  if (rank >= 0) return { start: named[rank]!, rank };
  return { start: centredAt(field, x), rank: named.length };
}

/** Says a start up that has a course's bottom at `y`; exact to the nanometre. */
export function sayUp(field: Field, y: Nm): Said<UpStart> {
  const { ground, up } = field;
  const named = namedUp(ground.wall);
  const rank = named.findIndex((start) => isApart(upOrigin(ground, start), y, up.module));
  if (rank >= 0) return { start: named[rank]!, rank };
  const { joint } = ground;
  // The lowest bed joint that runs above the region's bottom.
  const first = within(y - joint + Math.floor(joint / 2), up.module, up.low);
  return { start: { kind: "joint", y: first }, rank: named.length };
}

/** Whether two places are whole modules apart. */
function isApart(a: Nm, b: Nm, module: Nm): boolean {
  return (a - b) % module === 0;
}

/** A tile centred at a place near the wall's middle, such that its left edge is as at `x`. */
function centredAt({ ground, across }: Field, x: Nm): OwnStart {
  const { face, module } = across;
  const middle = ground.wall.size.across / 2;
  const nearest = x + Math.round((middle - face / 2 - x) / module) * module;
  // Half a nanometre is rounded away from zero, so one of these is exact: zero itself has none.
  const places = [nearest, nearest + module].flatMap((left) => {
    const middleOfTile = left + Math.floor(face / 2);
    return [middleOfTile, middleOfTile + 1];
  });
  const starts = places.map(
    (place) => ({ kind: "tile", centre: { on: "place", x: place } }) as const,
  );
  return starts.find((start) => isApart(acrossOrigin(ground, start), x, module)) ?? starts[0]!;
}
