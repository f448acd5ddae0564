import { counted, exactLength, formatLength, type Unit } from "../measure/index.js";
import { setName } from "../rules/index.js";
import { faceWords } from "../model/index.js";
import type { SolvedInside, SolvedLay, SolvedPlan, SolvedWall } from "../solver/index.js";
import { choiceText } from "./choice-text.js";
import { layReading, type LayReading } from "./reading.js";
import { softPlaces } from "./soft-places.js";
import { spacerWords } from "./spacer-words.js";
import { acrossWords, upWords } from "./start-words.js";

/** The dust: OSHA 29 CFR 1926.1153 Table 1; the saw: 29 CFR 1926.404(b)(1). */
const CAUTION = `
Before you cut: tile dust holds silica, so cut wet or with extraction; a saw near water runs on a
GFCI. Follow local code, the maker's instructions and a licensed trade.
`;

/** A solved plan in a few lines a wall, for people: counts, the smallest cut, what was chosen and why. */
export function* readingText({ plan, walls }: SolvedPlan): Generator<string> {
  if (plan.title) yield `${plan.title}\n`;
  if (walls.length === 0) yield "no walls: a stock list for other plans\n";
  for (const wall of walls) yield* wallText(wall, plan.units);
  if (walls.some((wall) => wall.lays.length > 0)) yield CAUTION;
}

function* wallText(solved: SolvedWall, units: Unit): Generator<string> {
  const { name, title, size } = solved.wall;
  const length = (nm: number): string => formatLength(nm, units);
  yield `\nwall ${name}${title ? ` (${title})` : ""}: ${length(size.across)} x ${length(size.up)}\n`;
  if (solved.refused) {
    const { pieces, most } = solved.refused;
    yield `  not laid: it asks for ${pieces} pieces, and the most is ${most}\n`;
  } else if (solved.lays.length === 0) {
    yield `  no tile is laid on it\n`;
  }
  for (const lay of solved.lays) {
    const name = solved.lays.length > 1 ? `lay ${lay.lay.name}: ` : "";
    yield `  ${name}${countsText(layReading(solved.wall, lay), units)}\n`;
    if (lay.stand) yield `  ${setText(lay, units)}\n`;
    yield* startText(lay, units);
  }
  const soft = softPlaces(solved, units);
  if (soft.length > 0)
    yield `  soft ${soft.length === 1 ? "joint" : "joints"} in the tile ${soft.join(", ")}\n`;
  for (const inside of solved.insides) yield* insideText(inside, units);
}

/** `niche shelf, sill: 12 in x 3 15/16 in; 2 courses, 6 pieces, 5 cuts; smallest cut ...` */
function* insideText({ wall, opening, face, lays }: SolvedInside, units: Unit): Generator<string> {
  const { across, up } = wall.size;
  const size = `${formatLength(across, units)} x ${formatLength(up, units)}`;
  const name = `${opening.kind} ${opening.name}, ${faceWords(face)}`;
  const counts = lays.map((lay) => countsText(layReading(wall, lay), units));
  yield `  ${name}: ${size}; ${counts.join("; ") || "no room for tile"}\n`;
}

/** `courses 1 to 6 are set, their top at 18 1/8 in as measured; planned at 18 in`. */
export function setText(lay: SolvedLay, units: Unit): string {
  const { set } = lay.lay;
  const { planned, top, reached } = lay.stand!;
  const name = setName(lay)!;
  const many = set!.from < set!.to;
  const said = `${name} ${many ? "are" : "is"} set`;
  if (set!.tops.length === 0 || !reached) return said;
  const figures = [top, planned].map((nm) => formatLength(nm, units));
  return `${said}, ${many ? "their" : "its"} top at ${figures[0]!} as measured; planned at ${figures[1]!}`;
}

function countsText({ courses, pieces, cuts, smallest }: LayReading, units: Unit): string {
  const counts = `${counted(courses, "course")}, ${counted(pieces, "piece")}, ${counted(cuts, "cut")}`;
  if (!smallest) return counts;
  const size = [smallest.width, smallest.height].map((nm) => formatLength(nm, units)).join(" x ");
  return `${counts}; smallest cut ${size} (${smallest.piece})`;
}

function* startText(solved: SolvedLay, units: Unit): Generator<string> {
  const { choice } = solved;
  const chosen = (part: "across" | "up" | "joint"): string =>
    choice?.left.includes(part) ? "   # chosen" : "";
  const spacers = spacerWords(solved, units);
  const joint = exactLength(solved.joint, units);
  yield `  joint ${joint}${chosen("joint")}${spacers ? `; ${spacers}` : ""}\n`;
  yield `  ${acrossWords(solved.across, units)}${chosen("across")}\n`;
  yield `  ${upWords(solved.up, units)}${chosen("up")}\n`;
  if (choice) yield* choiceText(choice, units);
}
