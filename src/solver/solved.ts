import type { Nm } from "../measure/index.js";
import type {
  Edge,
  Hole,
  InsideFace,
  Lay,
  Opening,
  Plan,
  Side,
  UpStart,
  Wall,
} from "../model/index.js";
import type { Box } from "./box.js";
import type { Chain } from "./chain.js";
import type { PieceTable } from "./piece-table.js";
import type { RoomFound } from "./room/index.js";
import type { Ring, Shape } from "./shape.js";
import type { SettledStart } from "./start.js";

/** What another lay of the same wall has: the courses of the lay round it run into it as into an opening. */
export interface LayPatch extends Omit<Opening, "kind"> {
  readonly kind: "lay";
}

/** What an opening takes from the tiled region: its rectangle grown by its joint, or its frame's. */
export interface Takeaway<Of = Opening | LayPatch> {
  readonly opening: Of;
  readonly box: Box;
}

/** A round hole in the region. */
export interface RoundHole {
  readonly hole: Hole;
  /** Its bounds; the circle touches each side of them. */
  readonly box: Box;
}

/** The part of a wall that is tiled, or of it what one lay has; other lays take nothing of a whole wall's. */
export interface Region<Of = Opening | LayPatch> {
  readonly left: Chain;
  readonly right: Chain;
  readonly bottom: Chain;
  readonly top: Chain;
  /** Where another wall's tile covers this one's end: what lies beyond is hidden. null when nothing is. */
  readonly hiddenLeft: Chain | null;
  readonly hiddenRight: Chain | null;
  /** The same inside an opening, where the sill's and the head's tile cover the back's; null on a wall. */
  readonly hiddenBottom: Chain | null;
  readonly hiddenTop: Chain | null;
  readonly takeaways: readonly Takeaway<Of>[];
  readonly roundHoles: readonly RoundHole[];
  /** What steps in the wall's outline leave out, grown by the joints of the sides that they face. */
  readonly steps: readonly Box[];
  /** Between the wall's legs: where its bottom is the one that it stands on. */
  readonly between: { readonly left: Nm; readonly right: Nm };
  /** The smallest box round the region, openings not taken away. */
  readonly bounds: Box;
}

/** The grid that tiles are laid on. */
export interface Lattice {
  /** The left edge of one tile of course 1, and the bottom of course 1's tiles. */
  readonly x: Nm;
  readonly y: Nm;
  readonly face: { readonly across: Nm; readonly up: Nm };
  readonly joint: Nm;
  /** The bed joint, where courses that are set came to stand higher or lower than planned; else as wide as `joint`. */
  readonly bed?: Nm;
  /** Course n is shifted right by ((n - 1) mod q) x p/q of a module; 0/1 for a stack bond. */
  readonly p: number;
  readonly q: number;
  /** How many courses of the bond are under course 1, where it goes on from another lay; else none. */
  readonly after?: number;
}

export interface Course {
  readonly number: number;
  /** The bottom and top of the course's whole tiles. */
  readonly bottom: Nm;
  readonly top: Nm;
}

/** How good a layout is: compared in this order, smaller is better (the design's order). */
export interface Score {
  readonly slivers: number;
  readonly underHalf: number;
  /** How much the two ends differ: left against right, course by course, and bottom against top; nm. */
  readonly imbalance: Nm;
  /** Cut pieces, notched ones counted twice. */
  readonly cuts: number;
  /** Tiles that are begun. */
  readonly tiles: number;
  /** The joint over the lower end of its range. */
  readonly jointOver: Nm;
}

/** One way to lay the wall, with its numbers. */
export interface Option {
  readonly across: SettledStart;
  readonly up: UpStart;
  readonly joint: Nm;
  readonly score: Score;
}

/** What a plan leaves free and no lay alone can settle, so that it stays where it may first stand. */
export interface Unsettled {
  /** The names of the wall and of its opening; null for the height that its tile stops at. */
  readonly wall: string;
  readonly opening: string | null;
  /** The names of the lays that it may come to stand in, or that hang from it. */
  readonly lays: readonly string[];
  /** Whether it would have to be weighed in several lays, in none, or moves a lay that it isn't in. */
  readonly why: "spans" | "outside" | "moves";
}

/** How the walls of a room were chosen together. */
export interface RoomChoice {
  /** How many joints and heights of the room were weighed. */
  readonly weighed: number;
  /** Whether not all that may be better was looked at. */
  readonly capped: boolean;
  readonly unsettled: readonly Unsettled[];
}

/** What the solver decided, out of what. */
export interface Choice {
  /** Whether the wall was looked at alone, or all walls of the room together. */
  readonly by: "wall" | "room";
  /** What was left to the solver. */
  readonly left: readonly ("across" | "up" | "joint")[];
  readonly chosen: Option;
  /** The next best ones that really differ, best first. */
  readonly others: readonly Option[];
  /** How many starts and joints were weighed. */
  readonly weighed: number;
  /** The first measure on which the chosen one beats the next best, or null when nothing else differs. */
  readonly decidedBy: keyof Score | null;
  /** Whether the wall has so many candidates that not all could be weighed: there may be a better one. */
  readonly capped: boolean;
}

/** Where courses that are set stand. */
export interface SetStand {
  /** The top of the last one as the plan has it, and as it stands: its highest measured place. */
  readonly planned: Nm;
  readonly top: Nm;
  /** Whether their bed joints can come to the measured top; where they can't, it is left out. */
  readonly reached: boolean;
  /** The bottom of the first one. */
  readonly from: Nm;
  /** The bed joint between them. */
  readonly bed: Nm;
}

export interface SolvedLay {
  readonly lay: Lay;
  /** null where nothing of it is set. */
  readonly stand: SetStand | null;
  /** What of the wall's region it has. */
  readonly region: Region;
  /** The sides at which it meets another lay, or a line within the wall, instead of the wall's own side. */
  readonly inner: readonly Side[];
  /** What its pieces' ids begin with. */
  readonly idPrefix: string;
  /** How many courses are counted under its first one, in the lays that it stands on. */
  readonly below: number;
  readonly joint: Nm;
  readonly across: SettledStart;
  readonly up: UpStart;
  readonly lattice: Lattice;
  readonly courses: readonly Course[];
  readonly pieces: PieceTable;
  /** null when the plan states everything. */
  readonly choice: Choice | null;
}

/** One length of trim as it is cut. */
export interface TrimPiece {
  readonly shape: Shape;
  /** Along its run, long points included. */
  readonly length: Nm;
  /** The ends that are mitred, in the side's own direction. */
  readonly mitre: readonly ("left" | "right" | "bottom" | "top")[];
  /** Whether it is the trim's full length, uncut. */
  readonly whole: boolean;
}

/** The trim along one side of an opening, or along a free edge of the wall. */
export interface TrimRun {
  readonly along: { readonly opening: Opening } | { readonly edge: Edge };
  readonly side: Side;
  /** From left to right, or from the bottom up; along a slope of an outline as it runs. */
  readonly pieces: readonly TrimPiece[];
  /** From one end of its pieces to the other, long points and joints included. */
  readonly length: Nm;
  /** The joints between its pieces, same order; then, of a slope, its halves of those in its mitres. */
  readonly joints: readonly Ring[];
}

export interface SolvedWall {
  readonly wall: Wall;
  readonly region: Region<Opening>;
  /** From the bottom up, as they stand on each other. None when the wall has no lay, or asks for too many pieces. */
  readonly lays: readonly SolvedLay[];
  readonly trims: readonly TrimRun[];
  /** The surfaces inside its openings, opening by opening; none have insides of their own. */
  readonly insides: readonly SolvedInside[];
  /**
   * Set when the wall was left unlaid because the plan asks for more pieces, or more scribed ones,
   * than allowed.
   */
  readonly refused: { readonly pieces: number; readonly most: number } | null;
}

/** A surface inside an opening, as a wall of its own that is as large as what is tiled of it. */
export interface SolvedInside extends SolvedWall {
  readonly opening: Opening;
  readonly face: InsideFace;
}

export interface SolvedPlan {
  /** With the openings and heights that the text leaves free where they are settled. */
  readonly plan: Plan;
  /** Where the plan has wishes or leaves places free: how its walls were chosen, for the plan as the text has it. */
  readonly room?: RoomChoice & {
    readonly asked: Plan;
    /** The searches that it was laid by, in their order: those for what wishes cost begin with what they found. */
    readonly searches: readonly RoomFound[];
  };
  readonly walls: readonly SolvedWall[];
}
