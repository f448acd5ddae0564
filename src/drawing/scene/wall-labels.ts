import { boxesOverlap, boxRound, boxWithin } from "../labels.js";
import { rounded } from "../picture.js";
import type { Badge, Label, PictureBox, Place, RuledLine } from "../scene.js";
import { BADGE_RADIUS, BADGE_ROOM } from "../badge.js";
import { boxAt, freePlace } from "./free-place.js";
import type { BadgeWish } from "./marks.js";
import { labelsInside, stackedLabels, wordingSize, type NamedThing } from "./openings.js";

/** What stands inside a wall besides its pieces. */
export interface InnerLabels {
  readonly labels: readonly Label[];
  readonly badges: readonly Badge[];
  readonly leaders: readonly RuledLine[];
  /** Names that found no room in the wall; they are told below it. */
  readonly unplaced: readonly string[];
}

const NAME_SIZE = 1;

/** A wall is not papered over with badges: past these, outlines alone show the pieces. */
const MOST_BADGES = 60;
/** Between a badge and what is next to it, in ems. */
const CLEAR = 0.06;

/** The names of openings and holes, and the findings' badges, none over another. */
export function placeInner(
  things: readonly NamedThing[],
  wishes: readonly BadgeWish[],
  bounds: PictureBox,
  em: number,
): InnerLabels {
  const labels: Label[] = [];
  const leaders: RuledLine[] = [];
  const unplaced: string[] = [];
  const taken: PictureBox[] = [];
  const size = NAME_SIZE * em;
  const outside: NamedThing[] = [];
  for (const thing of things) {
    const inside = labelsInside(thing, size);
    const room = inside && boxRound(inside.map((label) => label.box));
    if (
      !inside ||
      !room ||
      taken.some((box) => boxesOverlap(box, room)) ||
      !boxWithin(room, bounds)
    ) {
      outside.push(thing);
      continue;
    }
    labels.push(...inside);
    taken.push(room);
  }
  // Holes stay seen: a name or a badge may lie beside one, not on it.
  const holes = things.filter((thing) => thing.inside === null).map((thing) => thing.around);
  for (const thing of outside) {
    const placed = placeOutside(thing, size, [...taken, ...holes], bounds);
    if (!placed) {
      unplaced.push(thing.wordings[0]!.join(", "));
      continue;
    }
    labels.push(...placed.labels);
    leaders.push(placed.leader);
    taken.push(placed.room);
  }
  const badges = placeBadges(wishes, [...taken, ...holes], bounds, em);
  return { labels, unplaced, badges: badges.badges, leaders: [...leaders, ...badges.leaders] };
}

function placeOutside(
  thing: NamedThing,
  size: number,
  taken: readonly PictureBox[],
  bounds: PictureBox,
): { labels: Label[]; leader: RuledLine; room: PictureBox } | null {
  for (const lines of thing.wordings) {
    const room = wordingSize(lines, size);
    const place = freePlace(thing.around, room, taken, bounds, false);
    if (!place) continue;
    return {
      labels: stackedLabels(lines, place, size),
      leader: leaderTo(thing.around, boxAt(place, room)),
      room: boxAt(place, room),
    };
  }
  return null;
}

function placeBadges(
  wishes: readonly BadgeWish[],
  alreadyTaken: readonly PictureBox[],
  bounds: PictureBox,
  em: number,
): { badges: Badge[]; leaders: RuledLine[] } {
  const taken = [...alreadyTaken];
  const badges: Badge[] = [];
  const leaders: RuledLine[] = [];
  const radius = rounded(BADGE_RADIUS * em);
  const side = 2 * BADGE_ROOM * radius + CLEAR * em;
  const size = { w: side, h: side };
  // One badge for each number first, then more of the same while there is room.
  const firsts = wishes.filter((wish, i) => wishes.findIndex((w) => w.group === wish.group) === i);
  const others = wishes.filter((wish) => !firsts.includes(wish));
  for (const { group, around } of [...firsts, ...others].slice(0, MOST_BADGES)) {
    const middle = freePlace(around, size, taken, bounds, true);
    if (!middle) continue;
    const box = boxAt(middle, size);
    taken.push(box);
    const place = { x: rounded(middle.x), y: rounded(middle.y) };
    badges.push({ severity: group.severity, middle: place, radius, number: group.number });
    if (!boxesOverlap(box, around)) leaders.push(leaderTo(around, box));
  }
  return { badges, leaders };
}

/** A line from the edge of a thing to the edge of its label. */
function leaderTo(thing: PictureBox, label: PictureBox): RuledLine {
  const to = nearest(label, middleOf(thing));
  const from = nearest(thing, to);
  return { kind: "leader", points: [from.x, from.y, to.x, to.y].map(rounded) };
}

function middleOf(box: PictureBox): Place {
  return { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
}

function nearest(box: PictureBox, to: Place): Place {
  return {
    x: Math.min(box.right, Math.max(box.left, to.x)),
    y: Math.min(box.bottom, Math.max(box.top, to.y)),
  };
}
