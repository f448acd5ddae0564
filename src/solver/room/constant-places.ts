import type { Nm } from "../../measure/index.js";
import type { Box } from "../box.js";
import type { Field } from "../choose/field.js";
import { ROOM_MOST } from "./budget.js";
import { placesByEdges, reachingOf } from "./free-places.js";
import type { WallFields } from "./wall-fields.js";

/** The directions by the letters of places. */
const AXIS = { x: "across", y: "up" } as const;

/**
 * The places of what is free in a direction that are critical wherever the tiles are: the ends of its
 * range, and where a piece between it and an edge, or another that is free and stands at such a place, is
 * just wide enough.
 */
export function constantPlaces(
  fields: WallFields,
  direction: "x" | "y",
): ReadonlyMap<number, readonly Nm[]> {
  const { free, wall, drawn } = fields;
  const { fields: base } = fields.base(drawn.stop);
  const fixed = edgesOf(
    fields.moving.filter((i) => !free[direction].includes(i)).map((i) => fields.boxOf(i)),
    direction,
  );
  const from = (i: number, edges: readonly Nm[]) =>
    placesByEdges(
      wall.openings[i]!.free[direction]!,
      reachingOf(fields, i, AXIS[direction]),
      sizesOf(fields, AXIS[direction]),
      edges,
    );
  const { edges: straight, clearLow, clearHigh } = base.own[AXIS[direction]];
  const edges = [clearLow, clearHigh, ...straight, ...fixed];
  const own = new Map(free[direction].map((i) => [i, from(i, edges)]));
  if (own.size < 2) return own;
  return new Map(
    free[direction].map((i) => {
      const others = free[direction]
        .filter((j) => j !== i)
        .flatMap((j) => own.get(j)!.map((at) => boxWith(fields, j, direction, at)));
      const all = from(i, [...edges, ...edgesOf(others, direction)]);
      return [i, fields.some(all, ROOM_MOST.places)];
    }),
  );
}

/** A field with what is free at all places that are critical wherever the tiles are: a start may be critical for each. */
export function withConstant(fields: WallFields, direction: "x" | "y", field: Field): Field {
  const boxes = [...constantPlaces(fields, direction)].flatMap(([i, places]) =>
    places.map((at) => boxWith(fields, i, direction, at)),
  );
  const fixed = fields.moving
    .filter((i) => !fields.free[direction].includes(i))
    .map((i) => fields.boxOf(i));
  return { ...field, boxes: [...field.boxes, ...fixed, ...boxes] };
}

/** The sizes under which a piece is too small, for the wall's own limits and those of its wishes. */
function sizesOf({ first }: WallFields, axis: "across" | "up"): readonly Nm[] {
  const all = [first.own, ...first.under.map(({ field }) => field)];
  return all.flatMap((field) => [field[axis].sliver, field[axis].half, field[axis].face]);
}

/** What an opening takes at a place in one direction, in the other where it is drawn. */
function boxWith(fields: WallFields, i: number, direction: "x" | "y", at: Nm): Box {
  return fields.boxAt(i, { ...fields.drawn.places[i]!, [direction]: at });
}

function edgesOf(boxes: readonly Box[], direction: "x" | "y"): Nm[] {
  return boxes.flatMap((box) =>
    direction === "x" ? [box.left, box.right] : [box.bottom, box.top],
  );
}
