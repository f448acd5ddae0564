import type { TokenType } from "chevrotain";
import { createToken, Lexer } from "chevrotain";
import { OPENING_KINDS } from "../model/index.js";
import { Name } from "./tokens.js";

/** Where a statement may stand: at the top of the plan or in a block. */
export type BlockKind =
  | "plan"
  | "tile"
  | "trim"
  | "saw"
  | "mortar"
  | "grout"
  | "sealant"
  | "wall"
  | "opening"
  | "lay"
  | "prefer"
  | "rules";

/** A word that begins a statement, and the block that it opens, if any. */
export interface Starter {
  readonly token: TokenType;
  readonly opens: BlockKind | null;
}

function starter(name: string, label: string, opens: BlockKind | null = null): Starter {
  return { token: createToken({ name: `${name}Start`, pattern: Lexer.NA, label }), opens };
}

const word = (text: string, opens: BlockKind | null = null): Starter =>
  starter(text[0]!.toUpperCase() + text.slice(1), `\`${text}\``, opens);

export const START = {
  plan: word("plan"),
  units: word("units"),
  bed: word("bed"),
  let: word("let"),
  use: word("use"),
  tile: word("tile", "tile"),
  trim: word("trim", "trim"),
  saw: word("saw", "saw"),
  mortar: word("mortar", "mortar"),
  grout: word("grout", "grout"),
  sealant: word("sealant", "sealant"),
  wall: word("wall", "wall"),
  rules: word("rules", "rules"),
  allow: word("allow"),
  face: word("face"),
  thickness: word("thickness"),
  variation: word("variation"),
  warpage: word("warpage"),
  edges: word("edges"),
  box: word("box"),
  directional: word("directional"),
  lot: word("lot"),
  breakage: word("breakage"),
  spares: word("spares"),
  /** `price` says per what, which is another word in each block. */
  tilePrice: starter("TilePrice", "`price`"),
  trimPrice: starter("TrimPrice", "`price`"),
  bagPrice: starter("BagPrice", "`price`"),
  tubePrice: starter("TubePrice", "`price`"),
  kerf: word("kerf"),
  rip: word("rip"),
  notch: word("notch"),
  /** A bag of mortar covers an area; one of grout is only weighed. */
  mortarBag: starter("MortarBag", "`bag`"),
  groutBag: starter("GroutBag", "`bag`"),
  backButter: starter("BackButter", "`back-butter`"),
  density: word("density"),
  tube: word("tube"),
  depth: word("depth"),
  size: word("size"),
  outline: word("outline"),
  leg: word("leg"),
  edge: starter("Edge", "a side"),
  opening: starter("Opening", "`window`, `niche`, `door`, `bench`, `curb` or `soffit`", "opening"),
  hole: word("hole"),
  lay: word("lay", "lay"),
  at: word("at"),
  covers: word("covers"),
  layOver: starter("LayOver", "`over`"),
  layUnder: starter("LayUnder", "`under`"),
  layCourses: starter("LayCourses", "`courses`"),
  between: word("between"),
  set: word("set"),
  /** Of an opening `movement` is the width of its joint, in a lay it names a joint of the lay. */
  softJoint: starter("SoftJoint", "`movement`"),
  frame: word("frame"),
  inset: word("inset"),
  movement: word("movement"),
  fall: word("fall"),
  untiled: word("untiled"),
  lining: starter("Lining", "`inside`, `back`, `sides`, `sill` or `head`"),
  bond: word("bond"),
  joint: word("joint"),
  across: word("across"),
  up: word("up"),
  prefer: word("prefer", "prefer"),
  coursesMeet: starter("CoursesMeet", "`courses`"),
  bondGoesOn: starter("BondGoesOn", "`bond`"),
  centreOn: starter("CentreOn", "`centre`"),
  noCut: starter("NoCut", "`no`"),
  wholeCourses: starter("WholeCourses", "`whole`"),
  equalEnds: starter("EqualEnds", "`equal`"),
  fewCuts: starter("FewCuts", "`few`"),
  /** Any name at the start of an entry of `rules { ... }`. */
  limit: starter("Limit", "the name of a limit"),
} as const;

const { edge, opening } = START;

/** What of an opening's inside a lining is of: all of it, or some of its surfaces. */
export const LINING_WORDS = ["inside", "back", "sides", "sill", "head"] as const;

/**
 * The statements of each block by their first word. The same word may mean something else inside a
 * line (`movement`, `joint`, `at`), and any of them may be a name: only its place decides.
 */
export const STATEMENTS: Readonly<Record<BlockKind, ReadonlyMap<string, Starter>>> = {
  plan: named([
    "plan",
    "units",
    "bed",
    "let",
    "use",
    "tile",
    "trim",
    "saw",
    "mortar",
    "grout",
    "sealant",
    "wall",
    "prefer",
    "rules",
    "allow",
  ]),
  tile: new Map<string, Starter>([
    ...named(["face", "thickness", "variation", "warpage", "edges", "box", "directional", "lot"]),
    ["price", START.tilePrice],
    ...named(["breakage", "spares", "allow"]),
  ]),
  trim: new Map<string, Starter>([
    ...named(["face", "thickness", "lot"]),
    ["price", START.trimPrice],
    ...named(["allow"]),
  ]),
  saw: named(["kerf", "rip"]),
  mortar: new Map<string, Starter>([
    ...named(["notch"]),
    ["bag", START.mortarBag],
    ["back-butter", START.backButter],
    ["price", START.bagPrice],
  ]),
  grout: new Map<string, Starter>([
    ...named(["density"]),
    ["bag", START.groutBag],
    ["price", START.bagPrice],
  ]),
  sealant: new Map<string, Starter>([...named(["tube", "depth"]), ["price", START.tubePrice]]),
  wall: new Map<string, Starter>([
    ...named(["size", "outline", "leg"]),
    ["bottom", edge],
    ["left", edge],
    ["right", edge],
    ["top", edge],
    ...OPENING_KINDS.map((kind) => [kind, opening] as const),
    ...named(["hole", "lay", "set"]),
    ["movement", START.softJoint],
    ...named(["prefer", "allow"]),
  ]),
  opening: new Map<string, Starter>([
    ...named(["at", "size", "frame", "inset", "movement", "depth", "fall", "untiled"]),
    ...LINING_WORDS.map((word) => [word, START.lining] as const),
    ...named(["allow"]),
  ]),
  lay: new Map<string, Starter>([
    ...named(["bond", "joint", "across", "up", "covers", "at", "size"]),
    ["over", START.layOver],
    ["under", START.layUnder],
    ["courses", START.layCourses],
    ...named(["between", "set"]),
    ["movement", START.softJoint],
    ...named(["allow"]),
  ]),
  prefer: new Map<string, Starter>([
    ["courses", START.coursesMeet],
    ["bond", START.bondGoesOn],
    ["centre", START.centreOn],
    ["no", START.noCut],
    ["whole", START.wholeCourses],
    ["equal", START.equalEnds],
    ["few", START.fewCuts],
  ]),
  rules: new Map(),
};

function named(names: readonly (keyof typeof START)[]): Map<string, Starter> {
  return new Map(names.map((name) => [name, START[name]]));
}

function inner(text: string, name = text[0]!.toUpperCase() + text.slice(1)): TokenType {
  return createToken({ name, pattern: Lexer.NA, label: `\`${text}\``, categories: Name });
}

/** Words with a meaning inside a line. Each may still be a name where a name is wanted. */
export const WORD = {
  x: inner("x", "Times"),
  measured: inner("measured"),
  movement: inner("movement"),
  joint: inner("joint"),
  corner: inner("corner"),
  outside: inner("outside"),
  under: inner("under"),
  over: inner("over"),
  free: inner("free"),
  trim: inner("trim"),
  mitre: inner("mitre"),
  butt: inner("butt"),
  stack: inner("stack"),
  running: inner("running"),
  to: inner("to"),
  tile: inner("tile"),
  centred: inner("centred"),
  wrapped: inner("wrapped"),
  mirrored: inner("mirrored"),
  added: inner("added"),
  swallowed: inner("swallowed"),
  on: inner("on"),
  at: inner("at"),
  full: inner("full"),
  rest: inner("rest"),
  course: inner("course"),
  from: inner("from"),
  left: inner("left"),
  right: inner("right"),
  bottom: inner("bottom"),
  top: inner("top"),
  pressed: inner("pressed"),
  rectified: inner("rectified"),
  across: inner("across"),
  up: inner("up"),
  front: inner("front"),
  back: inner("back"),
  plate: inner("plate"),
  off: inner("off"),
  pan: inner("pan"),
  tub: inner("tub"),
  down: inner("down"),
  floor: inner("floor"),
  ceiling: inner("ceiling"),
  counter: inner("counter"),
  wall: inner("wall"),
  a: inner("a"),
  box: inner("box"),
  piece: inner("piece"),
  bag: inner("bag"),
  tube: inner("tube"),
  covers: inner("covers"),
  meet: inner("meet"),
  goes: inner("goes"),
  cut: inner("cut"),
  courses: inner("courses"),
  sill: inner("sill"),
  head: inner("head"),
  of: inner("of"),
  ends: inner("ends"),
  cuts: inner("cuts"),
} as const;

/** The token type of each word that has a meaning inside a line. */
export const INNER_WORDS: ReadonlyMap<string, TokenType> = new Map(Object.entries(WORD));
