import type { Nm } from "../../measure/index.js";
import type { Opening, Side } from "../../model/index.js";
import { openingBox, type Takeaway } from "../../solver/index.js";
import type { SideGround } from "./side-checks.js";
import { type Border, type SiteCheck, stopsFrom } from "./site-check.js";
import { leastSlack, type Slack, slackOf } from "./slack.js";
import { acrossRow, restBefore, restPast, upRow } from "./tile-row.js";

const SIDES: readonly Side[] = ["left", "right", "bottom", "top"];

/** The distances to each side of the rough openings, but to those that lie on a line or past the tile. */
export function openingChecks(ground: SideGround): SiteCheck[] {
  const { wall, lay, overSet } = ground;
  const toCome = overSet
    ? wall.region.takeaways.filter(({ opening }) =>
        lay.region.takeaways.some((each) => each.opening === opening),
      )
    : wall.region.takeaways;
  return toCome.flatMap((taken) => SIDES.flatMap((side) => checkOf(ground, taken, side)));
}

function checkOf(ground: SideGround, { opening, box }: Takeaway<Opening>, side: Side): SiteCheck[] {
  const { wall, lines, region } = ground;
  const { bounds } = region;
  const border = borderAt(openingBox(opening)[side], side);
  const beyond = border.tile === 1 ? box[side] >= bounds[side] : box[side] <= bounds[side];
  const met = { bottom: "floor", top: "ceiling", left: null, right: null }[side];
  const floor = met !== null && opening.reaches === met;
  const line = lines[side];
  if (beyond || floor || line === null || border.at === line) return [];
  return [
    {
      wall: wall.wall.name,
      measure: { kind: "opening", opening, side },
      ...stopsFrom(line, border, slackBeside(ground, { opening, box }, side)),
    },
  ];
}

/** The tile that an opening's side cuts lies outside the opening. */
function borderAt(at: Nm, side: Side): Border {
  return { at, tile: side === "right" || side === "top" ? 1 : -1 };
}

function slackBeside(ground: SideGround, { opening, box }: Takeaway, side: Side): Slack {
  const { lay, measures } = ground;
  const edge = box[side];
  const joint = opening.frame ? lay.joint : (opening.movement ?? 0);
  if (side === "bottom" || side === "top") {
    const row = upRow(lay.lattice);
    const size = side === "top" ? restPast(row, edge) : restBefore(row, edge);
    return slackOf({ size, seen: size }, measures("up", joint));
  }
  const beside = lay.courses.filter(({ bottom, top }) => bottom < box.top && top > box.bottom);
  const slacks = beside.slice(0, lay.lattice.q).map(({ number }) => {
    const row = acrossRow(lay.lattice, number);
    const size = side === "right" ? restPast(row, edge) : restBefore(row, edge);
    return slackOf({ size, seen: size }, measures("across", joint));
  });
  return leastSlack(slacks);
}
