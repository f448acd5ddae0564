import { counted } from "../../measure/index.js";
import { setName } from "../../rules/index.js";
import type { AcrossStart, Centre, Edge, OutsideCorner, UpStart, Wall } from "../../model/index.js";
import type { SolvedLay, SolvedWall } from "../../solver/index.js";
import { plainText } from "../plain-text.js";
import type { Setting } from "./setting.js";

/** The title of a wall, or its name where it has none. */
export function wallTitle(wall: Wall): string {
  return plainText(wall.title) || plainText(wall.name);
}

/** What a side meets and by which joint, such as "ceiling, soft joint 1/8". */
export function edgeWords(edge: Edge, setting: Setting): string {
  const meeting = meetingWords(edge, setting);
  const { joint } = edge;
  if (!joint || joint.width === 0) return meeting;
  const kind = joint.kind === "movement" ? "soft joint" : "grout joint";
  return `${meeting}, ${kind} ${setting.length(joint.width)}`;
}

function meetingWords({ meets }: Edge, setting: Setting): string {
  switch (meets.kind) {
    case "free":
      return meets.trim ? `free edge, trim ${plainText(meets.trim.name)}` : "free edge";
    case "corner": {
      const title = cornerWall(meets.wall, setting);
      return meets.lap === "under"
        ? `corner: ${title} covers this edge`
        : `corner: covers the edge of ${title}`;
    }
    case "outside":
      return `outside corner: ${outsideWords(meets, cornerWall(meets.wall, setting))}`;
    default:
      return meets.kind === "wall" ? "another wall" : meets.kind;
  }
}

function outsideWords(meets: OutsideCorner, other: string): string {
  switch (meets.lap) {
    case "under":
      return `ends behind ${other}`;
    case "mitre":
      return `mitred with ${other}`;
    case "over": {
      const trim = meets.trim ? `, trim ${plainText(meets.trim.name)}` : "";
      return `covers the end of ${other}${trim}`;
    }
  }
}

function cornerWall(name: string, { plan }: Setting): string {
  const wall = plan.walls.find((each) => each.name === name);
  return wall ? wallTitle(wall) : plainText(name);
}

/** What the wall is laid with, one fact a line. */
export function layWords(solved: SolvedWall, setting: Setting): string[] {
  const { refused, lays } = solved;
  if (refused) {
    return [`Not laid: asks for ${refused.pieces} pieces; at most ${refused.most} are drawn.`];
  }
  if (lays.length === 0) return ["Nothing is laid on this wall."];
  return lays.flatMap((lay) => [
    ...(goesOnOverSet(lay, lays)
      ? [`Over them the bond goes on, joint ${setting.length(lay.joint)}.`]
      : [tileWords(lay, setting), startWords(lay, setting)]),
    ...setWords(lay, setting),
  ]);
}

/** Whether a lay is the rest of one of which courses are set, so that only its joint is news. */
function goesOnOverSet({ lay }: SolvedLay, lays: readonly SolvedLay[]): boolean {
  return lays.some(
    ({ lay: { name, tile }, stand }) =>
      stand !== null && name === lay.goesOnFrom && tile === lay.tile,
  );
}

/** What is on the wall already, and where its top is. */
function setWords(lay: SolvedLay, { length }: Setting): string[] {
  if (!lay.stand) return [];
  const { planned, top } = lay.stand;
  const measured = top === planned ? "as planned" : `as measured; planned at ${length(planned)}`;
  return [`Set already: ${plainText(setName(lay)!)}, the top at ${length(top)} ${measured}.`];
}

function tileWords({ lay, joint }: SolvedLay, { length }: Setting): string {
  const { tile, bond } = lay;
  const face = `${length(tile.face.across)} × ${length(tile.face.up)}`;
  const bonding = bond.kind === "stack" ? "stack bond" : `running bond ${bond.p}/${bond.q}`;
  return `${plainText(tile.title) || plainText(tile.name)} (face ${face}), ${bonding}, joint ${length(joint)}`;
}

function startWords({ lay, across, up }: SolvedLay, setting: Setting): string {
  const chosen = (left: boolean) => (left ? " (chosen)" : "");
  return (
    `Across: ${acrossWords(across, setting)}${chosen(lay.across === null)}. ` +
    `Up: ${upWords(up, setting)}${chosen(lay.up === null)}.`
  );
}

function acrossWords(start: AcrossStart, setting: Setting): string {
  if (start.kind === "full-tile") return `full tile from the ${start.from}`;
  if ("wall" in start) {
    const from = `${start.kind} from ${cornerWall(start.wall, setting)}`;
    return start.kind === "wrapped" ? `${from}, the corner’s joint ${start.joint}` : from;
  }
  return `${start.kind} centred ${centreWords(start.centre, setting)}`;
}

function centreWords(centre: Centre, { length }: Setting): string {
  switch (centre.on) {
    case "wall":
      return "on the wall";
    case "opening":
      return `on ${plainText(centre.opening.name)}`;
    case "place":
      return `at ${length(centre.x)}`;
  }
}

function upWords(start: UpStart, { length }: Setting): string {
  switch (start.kind) {
    case "full-course":
      return `full course from the ${start.from}`;
    case "at-opening":
      return `full course ${start.relation} ${plainText(start.opening.name)}`;
    case "joint":
      return `joint at ${length(start.y)}`;
  }
}

/** One sentence on a wall, for those who hear the picture. */
export function wallSentence(solved: SolvedWall, setting: Setting): string {
  const { wall } = solved;
  const { length } = setting;
  const size = `${length(wall.size.across)} across, ${length(wall.size.up)} up`;
  const laid = solved.lays.map(
    (lay) => `${counted(lay.courses.length, "course")}, ${counted(lay.pieces.count, "piece")}`,
  );
  const openings = wall.openings.map((opening) => `${opening.kind} ${plainText(opening.name)}`);
  const holes = wall.holes.map((hole) => `hole ${plainText(hole.name)}`);
  return `${[size, ...laid, ...openings, ...holes].join("; ")}.`;
}
