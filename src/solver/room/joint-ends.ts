import type { Nm } from "../../measure/index.js";
import type { Field } from "../choose/field.js";
import { acrossOrigin, type SettledStart, upOrigin } from "../start.js";
import { withConstant } from "./constant-places.js";
import type { Ends, StartAtEnds } from "./room-joints.js";
import type { WallFields } from "./wall-fields.js";

/**
 * A wall at both ends of a range of joints, by its own limits and those of each wish. With `isAll` what may move
 * stands at all places that are critical wherever the tiles are, else where it is drawn.
 */
export function endsOf(least: WallFields, most: WallFields, isAll: boolean): Ends[] {
  const starts = { across: acrossStarts(least, most), up: upStarts(least, most) };
  const fieldsOf = (fields: WallFields): Field[] => {
    const all = [fields.first.own, ...fields.first.under.map(({ field }) => field)];
    if (!isAll) return all;
    return all.map((field) => withConstant(fields, "x", withConstant(fields, "y", field)));
  };
  const others = fieldsOf(most);
  return fieldsOf(least).map((field, k) => ({ least: field, most: others[k]!, starts }));
}

/** The start that is stated, or those that have a tile or a joint in the middle of what is wanted so. */
function acrossStarts(least: WallFields, most: WallFields): StartAtEnds[] {
  const stated = least.first.own.ground.lay.across;
  const wanted = least.wall.openings
    .filter((_, i) => least.isCentred(i))
    .flatMap((opening): SettledStart[] => [
      { kind: "tile", centre: { on: "opening", opening } },
      { kind: "joint", centre: { on: "opening", opening } },
    ]);
  return (stated ? [stated] : wanted).map((start) =>
    atEnds(least, most, ({ first }) => acrossOrigin(first.own.ground, start)),
  );
}

function upStarts(least: WallFields, most: WallFields): StartAtEnds[] {
  const { up } = least.lay;
  return up ? [atEnds(least, most, ({ first }) => upOrigin(first.own.ground, up))] : [];
}

function atEnds(least: WallFields, most: WallFields, of: (fields: WallFields) => Nm): StartAtEnds {
  return { least: of(least), most: of(most) };
}
