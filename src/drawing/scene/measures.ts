import type { Nm } from "../../measure/index.js";
import {
  cutOf,
  pieceBounds,
  softJoints,
  valueAt,
  visibleBounds,
  type Box,
  type Chain,
  type Region,
  type SolvedLay,
  type SolvedWall,
} from "../../solver/index.js";
import { across, down } from "../picture.js";
import { openingBox } from "./ground.js";
import { intoRanks, type RankWish, type Stretch } from "./rank.js";
import { isMain } from "./main-lay.js";
import type { Setting } from "./setting.js";

/** A running bond's courses repeat after q; more than these would say the same once more. */
const MOST_COURSES_TOLD = 3;

/** The rows below a wall: the ends of course 1 and of those that alternate with it, openings, all. */
export function rowWishes(solved: SolvedWall, setting: Setting): RankWish[] {
  const wishes: RankWish[] = [];
  for (const lay of solved.lays) {
    const told = Math.min(lay.lattice.q, lay.courses.length, MOST_COURSES_TOLD);
    for (let i = 0; i < told; i++) {
      const stretches = courseEnds(lay, i, setting);
      // Over courses that are set the bond goes on: what it says again is said once.
      const isToldOnce = !wishes.some((wish) => isSame(wish.stretches, stretches));
      if (stretches.length > 0 && isToldOnce) {
        const number = lay.below + lay.courses[i]!.number;
        const whose = isMain(lay) ? "" : `${lay.lay.name} `;
        wishes.push({
          part: `${whose}course-${number}`.replace(" ", "-"),
          caption: `${whose}course ${number}`,
          stretches,
        });
      }
    }
  }
  const { across: width } = solved.wall.size;
  const chains = openingRanks(solved, (box) => [box.left, box.right]);
  chains.forEach((boxes, i) => {
    const places = [0, ...boxes.flat(), width];
    wishes.push({
      part: `openings-${i + 1}`,
      caption: "openings",
      stretches: chainOf(places, across, setting),
    });
  });
  const soft = softMiddles(solved, "upright");
  if (soft.length > 0) {
    const stretches = chainOf([0, ...soft, width], across, setting);
    wishes.push({ part: "soft-joints", caption: "soft joints", stretches });
  }
  wishes.push({
    part: "wall",
    caption: "bare wall",
    stretches: [{ from: 0, to: across(width), text: setting.length(width) }],
  });
  return wishes;
}

function isSame(one: readonly Stretch[], other: readonly Stretch[]): boolean {
  return (
    one.length === other.length &&
    one.every(({ from, to, text }, i) => {
      const same = other[i]!;
      return from === same.from && to === same.to && text === same.text;
    })
  );
}

/** The middles of the soft joints in the tile, upright or level ones, in order. */
function softMiddles(solved: SolvedWall, way: "upright" | "level"): Nm[] {
  const runs = softJoints(solved).runs.filter((run) => run.way === way);
  return runs.map(({ from, to }) => Math.floor((from + to) / 2)).sort((a, b) => a - b);
}

/** The columns left of a wall: cut courses, openings, all. */
export function columnWishes(solved: SolvedWall, setting: Setting): RankWish[] {
  const wishes = intoRanks(courseHeights(solved, setting)).map((stretches, i) => ({
    part: `courses-${i + 1}`,
    caption: null,
    stretches,
  }));
  const { up } = solved.wall.size;
  openingRanks(solved, (box) => [box.bottom, box.top]).forEach((boxes, i) => {
    const places = [0, ...boxes.flat(), up].filter((y, j) => j === 0 || y >= 0);
    wishes.push({
      part: `openings-up-${i + 1}`,
      caption: null,
      stretches: chainOf(places, down, setting),
    });
  });
  const soft = softMiddles(solved, "level");
  if (soft.length > 0) {
    const stretches = chainOf([0, ...soft, up], down, setting);
    wishes.push({ part: "soft-joints-up", caption: null, stretches });
  }
  wishes.push({
    part: "wall-up",
    caption: null,
    stretches: [{ from: 0, to: down(up), text: setting.length(up) }],
  });
  return wishes;
}

/** The column right of a wall: the end heights of its first and last course where they differ from the left's. */
export function rightWish(solved: SolvedWall, setting: Setting): RankWish | null {
  const stretches = solved.lays.filter(isMain).flatMap((lay) => {
    const first = endHeight(lay, lay.courses[0], setting);
    const last = endHeight(lay, lay.courses.at(-1), setting);
    return [first, last].flatMap((ends) =>
      ends && ends.left?.text !== ends.right?.text && ends.right ? [ends.right] : [],
    );
  });
  const [rank] = intoRanks(stretches);
  return rank ? { part: "courses-right", caption: null, stretches: rank } : null;
}

/** The left end, the whole tiles between, the right end of a course. */
function courseEnds(lay: SolvedLay, index: number, setting: Setting): Stretch[] {
  const { pieces } = lay;
  const first = pieces.courseStart[index]!;
  const last = pieces.courseStart[index + 1]! - 1;
  if (last < first) return [];
  const left = endStretch(lay, first, setting);
  if (first === last) return [left];
  const right = endStretch(lay, last, setting);
  return [left, { from: left.to, to: right.from, text: wholeBetween(lay, first, last) }, right];
}

function endStretch(lay: SolvedLay, piece: number, { length }: Setting): Stretch {
  const box = pieceBounds(lay.pieces, piece);
  const seen = visibleBounds(lay.pieces, piece);
  const width = length(box.right - box.left);
  const hides = seen && seen.right - seen.left < box.right - box.left;
  const text = hides ? `${width} (${length(seen.right - seen.left)} seen)` : width;
  return { from: across(box.left), to: across(box.right), text };
}

/** How many tiles stand between the ends, where nothing else does. */
function wholeBetween(lay: SolvedLay, first: number, last: number): string | null {
  const count = last - first - 1;
  if (count < 1) return null;
  const reached = lay.pieces.column[last]! - lay.pieces.column[first]! - 1;
  if (reached !== count) return null;
  for (let i = first + 1; i < last; i++) {
    const box = pieceBounds(lay.pieces, i);
    if (box.right - box.left < lay.lattice.face.across) return null;
    if (cutOf(lay.pieces, i) === "hole") return null;
  }
  return count === 1 ? "1 full width" : `${count} full widths`;
}

function courseHeights(solved: SolvedWall, setting: Setting): Stretch[] {
  return solved.lays.filter(isMain).flatMap((lay) => {
    const ends = [lay.courses[0], lay.courses.at(-1)].flatMap((course) => {
      const stretch = endHeight(lay, course, setting)?.left;
      return stretch ? [stretch] : [];
    });
    const openings = lay.region.takeaways.flatMap(({ opening, box }) =>
      opening.kind === "lay" ? [] : sillAndHead(lay, box, lay.region, setting),
    );
    return [...ends, ...openings];
  });
}

/** How high a course's pieces are at the two ends of the region; at neither, how high they are where the bottom or the top is level. */
function endHeight(
  lay: SolvedLay,
  course: SolvedLay["courses"][number] | undefined,
  { length }: Setting,
): { left: Stretch | null; right: Stretch | null } | null {
  if (!course) return null;
  const { region } = lay;
  const between = (low: Nm, high: Nm): Stretch | null => {
    const bottom = Math.max(course.bottom, low);
    const top = Math.min(course.top, high);
    if (bottom >= top) return null;
    return {
      from: down(bottom),
      to: down(top),
      text: `course ${lay.below + course.number}: ${length(top - bottom)}`,
    };
  };
  const at = (x: Nm) => between(valueAt(region.bottom, x), valueAt(region.top, x));
  const [left, right] = [at(region.bounds.left), at(region.bounds.right)];
  if (left ?? right) return { left, right };
  const { bottom, top } = region.bounds;
  const isLevel = isLevelAt(region.top, top) && isLevelAt(region.bottom, bottom);
  return { left, right: isLevel ? between(bottom, top) : null };
}

/** Whether a side runs level at this height for a part. */
function isLevelAt({ at, value }: Chain, height: Nm): boolean {
  return value.some((v, i) => v === height && (at.length === 1 || (i > 0 && value[i - 1] === v)));
}

/** What is left of the course under an opening and of the one over it; none past the tile. */
function sillAndHead(lay: SolvedLay, box: Box, { bounds }: Region, { length }: Setting): Stretch[] {
  const stretches: Stretch[] = [];
  const stretch = (name: string, bottom: Nm, top: Nm) =>
    stretches.push({ from: down(bottom), to: down(top), text: `${name}: ${length(top - bottom)}` });
  const sill = lay.courses.filter((course) => course.bottom < box.bottom).at(-1);
  if (sill && sill !== lay.courses.at(-1) && box.bottom > bounds.bottom) {
    stretch("sill course", sill.bottom, Math.min(sill.top, box.bottom));
  }
  const head = lay.courses.find((course) => course.top > box.top);
  if (head && head !== lay.courses[0] && box.top < bounds.top) {
    stretch("head course", Math.max(head.bottom, box.top), head.top);
  }
  return stretches;
}

/** The openings' stretches in one direction, in as few ranks as keep them apart, each in order. */
function openingRanks(
  { region, wall }: SolvedWall,
  ends: (box: Box) => readonly [Nm, Nm],
): (readonly [Nm, Nm])[][] {
  const all = region.takeaways.map((takeaway) => ends(openingBox(wall, takeaway)));
  const sorted = [...all].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const ranks: (readonly [Nm, Nm])[][] = [];
  for (const stretch of sorted) {
    if (ranks.some((rank) => rank.some((e) => e[0] === stretch[0] && e[1] === stretch[1])))
      continue;
    const free = ranks.find((rank) => rank.at(-1)![1] <= stretch[0]);
    if (free) free.push(stretch);
    else ranks.push([stretch]);
  }
  return ranks;
}

/** Stretches from place to place; places that coincide or run backwards are passed over. */
function chainOf(
  places: readonly Nm[],
  toPicture: (nm: Nm) => number,
  setting: Setting,
): Stretch[] {
  const chain: Stretch[] = [];
  let from = places[0]!;
  for (const to of places.slice(1)) {
    if (to <= from) continue;
    chain.push({ from: toPicture(from), to: toPicture(to), text: setting.length(to - from) });
    from = to;
  }
  return chain;
}
