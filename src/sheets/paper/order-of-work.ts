import { isCorner } from "../../model/index.js";
import { formatLength, type Nm, NM_PER } from "../../measure/index.js";
import { FLATNESS, flatnessFor } from "../../rules/index.js";
import { type Course, countingLay, type SolvedWall } from "../../solver/index.js";
import { setText } from "../reading-text.js";
import { plainText } from "../../drawing/index.js";
import { courseRows } from "../setting-out/course-table.js";
import { startCourse, workingLine } from "../setting-out/level-line.js";
import { CONTACT, METRIC_FLATNESS, PLUMB } from "../setting-out/trade.js";
import { wallOrder } from "../setting-out/wall-order.js";
import { waterOf } from "../setting-out/water.js";
import type { Ground } from "./ground.js";
import { andList, openingWords, titleOf } from "./words.js";

/** The whole job in its order: one step an item. */
export function orderOfWork(ground: Ground): string[] {
  const { solved } = ground;
  const laid = solved.walls.filter((wall) => wall.lays.length > 0);
  if (laid.length === 0) return [];
  const order = wallOrder(laid);
  const { wet } = waterOf(solved.plan);
  return [
    backingStep(ground, laid),
    ...(wet
      ? [
          "Waterproof the wall behind wet tile, let it cure, and flood-test the pan before any tile stands on it.",
        ]
      : []),
    linesStep(ground, order),
    "Measure what the table of checks names, and stop where a figure passes its limit.",
    "Lay the first uncut course dry along the lath, from plumb line to plumb line, before mortar is mixed.",
    contactStep(wet),
    ...order.flatMap((wall) => wallSteps(ground, wall, order)),
    "Grout when the mortar has set as its maker says. Keep grout and mortar out of every soft joint.",
    "Fill the soft joints with sealant last, on clean and dry edges.",
  ];
}

function backingStep({ solved }: Ground, walls: readonly SolvedWall[]): string {
  const { units } = solved.plan;
  if (units !== "inch" && units !== "foot") {
    return `Have the backing sound, plumb, and flat within ${METRIC_FLATNESS.any} (${METRIC_FLATNESS.source}).`;
  }
  const wanted = walls.flatMap(({ lays }) => lays.map(({ lay }) => flatnessFor(lay.tile)));
  const strict = wanted.includes(FLATNESS.large);
  const { long, short } = strict ? FLATNESS.large : FLATNESS.small;
  return (
    `Have the backing sound, flat within ${within(long)} and ${within(short)} (${FLATNESS.source}) ` +
    `and plumb within ${strict ? PLUMB.long : PLUMB.short} (${PLUMB.source}).`
  );
}

/** `1/4 in in 10 ft`. */
function within({ off, in: run }: { readonly off: Nm; readonly in: Nm }): string {
  return `${formatLength(off, "inch")} in ${run / NM_PER.foot} ft`;
}

function contactStep(wet: boolean): string {
  const back = "of the tile's back";
  const most = wet
    ? `at least ${CONTACT.wet} ${back} (wet; ${CONTACT.dry} in dry places)`
    : `at least ${CONTACT.dry} ${back}`;
  return (
    `Pull a tile now and again while the mortar is fresh: it must touch ${most}, ` +
    `corners and edges too (${CONTACT.source}).`
  );
}

function linesStep(ground: Ground, order: readonly SolvedWall[]): string {
  const heights = new Map<number, string[]>();
  for (const wall of order) {
    const line = workingLine(ground.solved, wall);
    if (line) heights.set(line.y, [...(heights.get(line.y) ?? []), titleOf(wall.wall)]);
  }
  const told = [...heights].map(([y, walls]) =>
    heights.size === 1 ? ground.both(y) : `${ground.both(y)} on ${andList(walls)}`,
  );
  return (
    `Strike the level line round all walls, then the working line over it: ${told.join("; ")}. ` +
    "Strike the plumb lines of each wall."
  );
}

function wallSteps(ground: Ground, wall: SolvedWall, order: readonly SolvedWall[]): string[] {
  const name = titleOf(wall.wall);
  const set = setSteps(ground, wall);
  if (set.length > 0) {
    return [...set.map((step) => `${name}: ${step}`), ...insideSteps(name, wall)];
  }
  const rows = wall.lays.flatMap(courseRows);
  const start = startCourse(wall);
  const last = rows.at(-1);
  if (!start || !last) return [];
  const from = start.number;
  const below = rows.filter(({ number }) => number < from);
  return [
    `${name}: ${whyNow(wall, order)}${startWords(ground, start)}`,
    `${name}: set ${courseSpan(from, last.number)}${last.cut ? ", the top one cut to its height" : ""}` +
      `${openingsWords(wall)}.`,
    ...insideSteps(name, wall),
    ...(below.length === 0
      ? []
      : [
          `${name}: when the field has set, take the ledger away and set ` +
            `${courseSpan(below[0]!.number, from - 1)} last, ` +
            `${below.some((row) => row.cut) ? "each piece scribed to the bottom" : "from the top down"}.`,
        ]),
  ];
}

/** The back of a niche goes first, so that the others cover its edges (common practice). */
function insideSteps(name: string, { insides }: SolvedWall): string[] {
  const openings = [...new Set(insides.map(({ opening }) => opening))];
  return openings.map((opening) => {
    const first =
      opening.kind === "niche" ? "its back, then its sill and head" : "its sill and head";
    return `${name}: inside ${openingWords(opening)} set ${first}, then its sides between them.`;
  });
}

/** What is left to do on a wall of which courses are set; none where nothing is. */
function setSteps({ both, solved }: Ground, wall: SolvedWall): string[] {
  const main = wall.lays.filter((lay) => countingLay(lay) === null);
  const set = main.filter(({ stand }) => stand !== null);
  const [first, top] = [set[0], set.at(-1)];
  if (!first || !top) return [];
  const from = first.below + first.lay.set!.from;
  const to = top.below + top.lay.set!.to;
  const rows = main.flatMap(courseRows);
  const [over, last] = [rows.find(({ number }) => number > to), rows.at(-1)!];
  const below = rows.filter(({ number }) => number < from);
  return [
    ...set.map(
      (lay) => `${setText(lay, solved.plan.units)}; they stay as they are, and need no cuts.`,
    ),
    ...(over
      ? [
          `check that course ${to} is level and its top at ${both(over.bottom - main.at(-1)!.joint)}, then set ` +
            `${courseSpan(over.number, last.number)}${last.cut ? ", the top one cut to its height" : ""}` +
            `${openingsWords(wall)}; the bottom of course ${over.number} stands at ${both(over.bottom)}.`,
        ]
      : []),
    ...(below.length === 0
      ? []
      : [
          `when the field has set, take the ledger away and set ${courseSpan(below[0]!.number, from - 1)} last.`,
        ]),
  ];
}

function whyNow({ wall }: SolvedWall, order: readonly SolvedWall[]): string {
  const named = (name: string) => {
    const found = order.find((other) => other.wall.name === name);
    return found ? titleOf(found.wall) : plainText(name);
  };
  const corners = [wall.edges.left.meets, wall.edges.right.meets].flatMap((meets) =>
    isCorner(meets) ? [meets] : [],
  );
  const coverers = corners.filter(({ lap }) => lap === "under").map((m) => named(m.wall));
  const covered = corners.filter(({ lap }) => lap === "over").map((m) => named(m.wall));
  return [
    coverers.length > 0 ? `before ${andList(coverers)}, whose tile covers its end; ` : "",
    covered.length > 0 ? `after ${andList(covered)}, whose end its tile covers; ` : "",
  ].join("");
}

/** Below a cut course stands a ledger; a whole one stands on the joint at the bottom. */
function startWords({ both }: Ground, { number, bottom }: Course): string {
  if (number === 1) {
    return "start with course 1 on spacers as high as the joint at the bottom, and hold it to the working line.";
  }
  return `fix a ledger level with its top edge at ${both(bottom)} over the level line, under course ${number}, and start on it.`;
}

function courseSpan(from: number, to: number): string {
  return from === to ? `course ${from}` : `courses ${from} to ${to}`;
}

function openingsWords({ wall }: SolvedWall): string {
  if (wall.openings.length === 0) return "";
  const framed = wall.openings.filter(({ frame }) => frame !== null);
  const frames = framed.length > 0 ? ", and set its trim before the courses close round it" : "";
  return `; cut round ${andList(wall.openings.map(openingWords))} as the courses reach it${frames}`;
}
