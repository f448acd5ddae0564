import { counted } from "../../measure/index.js";
import type {
  CourseShift,
  MovedPieces,
  OnWall,
  RecutPieces,
  SeveralPieces,
  Shift,
} from "../comparison.js";
import type { Exchange } from "../exchanges.js";
import { courseWords, numberRuns } from "./course-words.js";
import { bothCuts, cutWords } from "./cut-words.js";
import type { Lengths } from "./lengths.js";

/** `all courses move up 3/8 in`; where they step otherwise, also by how much across. */
export function shiftWords({ up, across }: CourseShift, lengths: Lengths): string {
  const [first = 0, ...others] = across;
  if (others.length === 0) return `all courses move ${lengths.shift({ across: first, up })}`;
  const steps = across.map((by) =>
    by === 0 ? "not at all" : lengths.shift({ across: by, up: 0 }),
  );
  const way = `by their place in the bond: ${steps.join(" or ")}`;
  if (up === 0) return `courses move ${way}`;
  return `all courses move ${lengths.shift({ across: 0, up })}, and across ${way}`;
}

/** `640 pieces only moved, up 3/8 in`. */
export function movedWords(groups: readonly MovedPieces[], lengths: Lengths): string {
  const all = groups.reduce((sum, { count }) => sum + count, 0);
  const said = `${counted(all, "piece")} only moved`;
  const told = groups.filter(({ by }) => by.across !== 0 || by.up !== 0);
  if (told.length === 1 && groups.length === 1) return `${said}, ${lengths.shift(told[0]!.by)}`;
  const most = (way: keyof Shift) =>
    told.reduce((far, { by }) => Math.max(far, Math.abs(by[way])), 0);
  const ways = (["across", "up"] as const)
    .filter((way) => most(way) > 0)
    .map((way) => `${lengths.far(most(way))} ${way === "up" ? "up or down" : "across"}`);
  return ways.length === 0 ? said : `${said}, by at most ${ways.join(" and ")}`;
}

/** `8 pieces at the left end: 3 in wide -> 2 5/8 in wide, in courses 1 to 8`. */
export function recutWords(
  { count, before, after, courses }: RecutPieces,
  lengths: Lengths,
): string {
  const [was, is] = bothCuts(before, after, lengths);
  const cut = after.cut === "none" ? before : after;
  const other = before.cut === "none" || after.cut === "none" || before.place === after.place;
  const place = other ? cut.place : `${after.place} (was ${before.place})`;
  const shape = was === is ? `${is}, of another shape` : `${was} -> ${is}`;
  return `${counted(count, "piece")} ${place}: ${shape}, ${courseWords(courses.after)}`;
}

/** `31 pieces at the left end change places: 2 5/8 in wide in courses 2 and 4, whole in course 3`. */
export function exchangeWords(pair: Exchange, lengths: Lengths): string {
  const pieces = counted(pair[0].count + pair[1].count, "piece");
  const now = pair.map(({ before, after, courses }) => {
    const [, is] = bothCuts(before, after, lengths);
    return `${is} ${courseWords(courses.after)}`;
  });
  return `${pieces} ${pair[0].after.place} change places: ${now.join(", ")}`;
}

/** New or gone pieces that are cut. */
export function apartWords(
  { count, piece, courses }: SeveralPieces,
  what: "new" | "gone",
  lengths: Lengths,
): string {
  const pieces = what === "new" ? counted(count, "new piece") : `${counted(count, "piece")} gone`;
  return `${pieces} ${piece.place}: ${cutWords(piece, lengths)}, ${courseWords(courses)}`;
}

/** `set courses 1 to 3 would be cut differently, 24 of their pieces: they are on the wall`. */
export function onWallWords({ lay, courses, pieces }: OnWall): string {
  const which = `${courses.length === 1 ? "course" : "courses"} ${numberRuns(courses)}`;
  const whose = lay === null ? "" : ` of ${lay}`;
  const [its, stands] = courses.length === 1 ? ["its", "it is"] : ["their", "they are"];
  return `set ${which}${whose} would be cut differently, ${pieces} of ${its} pieces: ${stands} on the wall`;
}
