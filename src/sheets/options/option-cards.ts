import { counted, formatLength, type Nm, type Unit } from "../../measure/index.js";
import { lossWords, missWords } from "../../rules/index.js";
import {
  measureRoom,
  type RoomOption,
  type Score,
  type SolvedPlan,
  type SolvedWall,
  type WallOptions,
  wishOutcomes,
} from "../../solver/index.js";
import { measureFigure } from "../measure-words.js";
import { cornersMet } from "./corners-met.js";
import { optionFigures } from "./option-figures.js";
import { optionLetter } from "./option-letter.js";
import { optionStart, standingWords } from "./option-words.js";
import { roomFigures } from "./room-figures.js";
import { layoutWords, outcomeWords, reasonWords, wishLabel } from "./room-words.js";

/** A name and its figure, such as `["cut pieces", "20"]`. */
export type CardFigure = readonly [name: string, figure: string];

/** What becomes of a wish in a layout. */
export interface CardWish {
  /** As the plan would state it. */
  readonly words: string;
  readonly isMet: boolean;
  /** `met`; else how far it is missed, and for the plan's own layout what it would cost. */
  readonly told: string;
}

/** One layout in words and figures, to stand beside others. */
export interface OptionCard {
  /** A for the best. */
  readonly letter: string;
  /** Where it stands among the others, and why it is told. */
  readonly standing: string;
  /** How each wall is laid, a line each. */
  readonly starts: readonly string[];
  readonly wishes: readonly CardWish[];
  readonly figures: readonly CardFigure[];
}

/** The options of a wall, side by side; the courses at its corners are held against the other walls as they are. */
export function wallCards(
  solved: SolvedPlan,
  wall: SolvedWall,
  found: WallOptions,
): readonly OptionCard[] {
  const { plan } = solved;
  const { units } = plan;
  return found.options.map((option, i): OptionCard => {
    const { smallest, cutPieces, tilesNeeded } = optionFigures(plan, option);
    const walls = solved.walls.map((each) => (each === wall ? option.wall : each));
    return {
      letter: optionLetter(i),
      standing: standingWords(found, i, units),
      starts: [optionStart(option, units)],
      wishes: [],
      figures: [
        ...scoreFigures(option.score, units),
        ["smallest cut", smallest ? sizeWords(smallest, units) : "none"],
        ...pieceFigures(cutPieces, tilesNeeded),
        ...cornerFigures({ plan, walls }, wall.wall.name),
      ],
    };
  });
}

/** The layouts of a room, side by side. */
export function roomCards(
  solved: SolvedPlan,
  options: readonly RoomOption[],
): readonly OptionCard[] {
  const asked = solved.room?.asked;
  const [best] = options;
  if (!asked || !best) return [];
  const { wishes, units } = asked;
  const own = measureRoom(solved.plan, solved.walls, wishes);
  const outcomes = wishOutcomes(solved);
  return options.map((option, i): OptionCard => {
    const loss = i === 0 ? "" : `; against A it costs ${lossWords(option, best, wishes, units)}`;
    const { width, height, cutPieces, tilesNeeded } = roomFigures(option.solved);
    return {
      letter: optionLetter(i),
      standing: `${reasonWords(option.reason, units)}${loss}`,
      starts: option.solved.walls.map((wall) => `${wall.wall.name}: ${layoutWords(wall, units)}`),
      wishes: wishes.map((wish, k): CardWish => {
        const missed = option.misses[k]!;
        const told = option.had
          ? outcomeWords(outcomes[k]!, own, asked)
          : missed === 0
            ? "met"
            : missWords(wish, missed, units);
        return { words: wishLabel(wish, units), isMet: missed === 0, told };
      }),
      figures: [
        ...scoreFigures(option.score, units),
        ["narrowest cut", lengthWords(width, units)],
        ["lowest cut", lengthWords(height, units)],
        ...pieceFigures(cutPieces, tilesNeeded),
        ...cornerFigures(option.solved, null),
      ],
    };
  });
}

function scoreFigures(score: Score, units: Unit): CardFigure[] {
  const joint: CardFigure[] =
    score.jointOver > 0 ? [["joint over its least", measureFigure("jointOver", score, units)]] : [];
  return [
    ["slivers", measureFigure("slivers", score, units)],
    ["cuts under half", measureFigure("underHalf", score, units)],
    ["out of balance", measureFigure("imbalance", score, units)],
    ...joint,
  ];
}

function pieceFigures(cutPieces: number, tilesNeeded: number): CardFigure[] {
  return [
    ["cut pieces", `${cutPieces}`],
    ["tiles needed", `${tilesNeeded}`],
  ];
}

function cornerFigures(solved: SolvedPlan, wall: string | null): CardFigure[] {
  const corners = cornersMet(solved, wall);
  if (!corners) return [];
  return [["courses meet", `at ${corners.met} of ${counted(corners.of, "corner")}`]];
}

function sizeWords({ width, height }: { width: Nm; height: Nm }, units: Unit): string {
  return `${formatLength(width, units)} x ${formatLength(height, units)}`;
}

function lengthWords(nm: Nm | null, units: Unit): string {
  return nm === null ? "none" : formatLength(nm, units);
}
