import type { CstNode, IToken } from "chevrotain";
import { OPENING_KINDS } from "../model/index.js";
import { LINING_WORDS } from "./vocabulary.js";
import type { Problems } from "./build-expression.js";
import { buildExpression, buildLiteral } from "./build-expression.js";
import { buildAmount, buildNumber } from "./build-amount.js";
import { nearest } from "./nearest.js";
import { nodeAt, nodesAt, spanOf, textOf, tokenAt, wordOf } from "./cst.js";
import type { Span } from "./line-table.js";
import type * as S from "./syntax.js";

/** Makes one kind of statement from its node; the word to underline is given. */
type Build = (node: CstNode, tree: TreeBuilder, stated: Span & { head: Span }) => S.Statement;

/** The plain tree of a parsed text. */
export function buildTree(text: CstNode, problems: Problems): S.PlanStatement[] {
  return new TreeBuilder(problems).body(text, "planStatement") as S.PlanStatement[];
}

class TreeBuilder {
  constructor(readonly problems: Problems) {}

  length(node: CstNode, label = "expression"): S.Expression {
    return buildExpression(nodeAt(node, label)!, this.problems);
  }

  optionalLength(node: CstNode, label: string): S.Expression | null {
    return nodeAt(node, label) ? this.length(node, label) : null;
  }

  pair(node: CstNode): { first: S.Expression; second: S.Expression } {
    const pair = nodeAt(node, "pair")!;
    return { first: this.length(pair, "first"), second: this.length(pair, "second") };
  }

  number(node: CstNode): S.WrittenNumber {
    return buildNumber(nodeAt(node, "number")!, this.problems);
  }

  amount(node: CstNode, label: "mass" | "volume" | "area"): S.WrittenAmount {
    return buildAmount(nodeAt(node, label)!, this.problems);
  }

  /** The statements of a block, in the order of the text. */
  body(node: CstNode, rule: string): S.Statement[] {
    return nodesAt(node, rule).flatMap((wrapper) => {
      const [kind, parts] = Object.entries(wrapper.children)[0] ?? [];
      const part = parts?.[0];
      return kind !== undefined && part && "children" in part ? [this.statement(kind, part)] : [];
    });
  }

  private statement(kind: string, node: CstNode): S.Statement {
    const build = BUILD[kind]!;
    const stated = { ...spanOf(node), head: this.headOf(node) };
    const isBlock = "CloseBrace" in node.children;
    if (node.recoveredNode && !isBlock)
      return { kind: "broken", meant: this.meantOf(kind, node), ...stated };
    return build(node, this, stated);
  }

  /** The name that a statement gives, else its keyword. */
  private headOf(node: CstNode): Span {
    const heading = nodeAt(node, "heading") ?? nodeAt(node, "titledHeading");
    const name = heading && tokenAt(heading, "Name");
    const named = name ?? (NAMED.has(node.name) ? tokenAt(node, "Name") : undefined);
    const { start, end } = wordOf(named ?? starterOf(node));
    return { start, end };
  }

  /** A broken edge is told by its side, so that its side doesn't count as unstated. */
  private meantOf(kind: string, node: CstNode): string {
    return kind === "edge" ? meantWord(starterOf(node), SIDES) : kind;
  }
}

const SIDES: readonly S.EdgeStatement["side"][] = ["left", "right", "bottom", "top"];

/** Statements other than blocks whose own name is underlined. */
const NAMED: ReadonlySet<string> = new Set(["let", "hole"]);

function starterOf(node: CstNode): IToken {
  const label = Object.keys(node.children).find((name) => name.endsWith("Start"))!;
  return tokenAt(node, label)!;
}

/** One of several words that begin a statement; a mistyped one, already told, stands for the nearest. */
function meantWord<T extends string>({ image }: IToken, words: readonly T[]): T {
  return words.find((word) => word === (nearest(image, words) ?? words[0])) ?? words[0]!;
}

function nameOf(node: CstNode): S.Word | null {
  const token = tokenAt(nodeAt(node, "heading") ?? nodeAt(node, "titledHeading") ?? node, "Name");
  return token ? wordOf(token) : null;
}

function titleOf(node: CstNode): S.Word | null {
  const heading = nodeAt(node, "titledHeading") ?? nodeAt(node, "namelessHeading");
  const token = tokenAt(heading ?? node, "Text");
  return token ? textOf(token) : null;
}

const measured =
  (kind: MeasuredKind): Build =>
  (node, tree, stated) => ({ kind, ...stated, length: tree.length(node) });

type MeasuredKind =
  | "bed"
  | "thickness"
  | "variation"
  | "warpage"
  | "box"
  | "spares"
  | "kerf"
  | "rip"
  | "back-butter"
  | "depth"
  | "inset"
  | "movement"
  | "between"
  | "fall";

const price: Build = (node, tree, stated) => ({
  kind: "price",
  ...stated,
  price: tree.number(node),
  per: tokenAt(node, "per")!.image as S.PricedPer,
});

/** A block without a name. */
const supply =
  (kind: "mortar" | "grout" | "sealant", part: string): Build =>
  (node, tree, stated) =>
    ({
      kind,
      ...stated,
      name: null,
      title: titleOf(node),
      body: tree.body(node, part),
    }) as S.Statement;

const besideStatement =
  (relation: "over" | "under"): Build =>
  (node, _, stated) => ({
    kind: "lay-beside",
    ...stated,
    relation,
    lay: wordOf(tokenAt(node, "Name")!),
  });

function buildCourseRun(run: CstNode, tree: TreeBuilder): S.CourseRun {
  const many = tokenAt(run, "many");
  const tile = tokenAt(run, "Name");
  return {
    many: many ? buildLiteral(many, tree.problems) : null,
    tile: tile ? wordOf(tile) : null,
    ...spanOf(run),
  };
}

function buildMeasuredTop(top: CstNode, tree: TreeBuilder): S.WrittenTop {
  const end = tokenAt(top, "end")?.image as "left" | "right" | undefined;
  return { y: tree.length(top, "y"), at: end ?? tree.optionalLength(top, "at"), ...spanOf(top) };
}

/** A line of `prefer { ... }`. */
const wish =
  (build: (node: CstNode, tree: TreeBuilder) => S.WrittenWish): Build =>
  (node, tree, stated) => ({ kind: "wish", ...stated, wish: build(node, tree) });

function buildWholeCourses(node: CstNode): S.WrittenWish {
  const side = tokenAt(node, "side");
  if (side) return { wanted: "whole-courses", at: side.image as "bottom" | "top" };
  const at = tokenAt(node, "edge")!.image as "sill" | "head";
  return { wanted: "whole-courses", at, opening: wordOf(tokenAt(node, "Name")!) };
}

const BUILD: Readonly<Record<string, Build>> = {
  plan: (node, _, stated) => ({ kind: "plan", ...stated, title: textOf(tokenAt(node, "Text")!) }),
  units: (node, _, stated) => ({ kind: "units", ...stated, unit: wordOf(tokenAt(node, "Name")!) }),
  bed: measured("bed"),
  let: (node, tree, stated) => ({
    kind: "let",
    ...stated,
    name: wordOf(tokenAt(node, "Name")!),
    value: tree.length(node),
  }),
  use: (node, _, stated) => ({ kind: "use", ...stated, path: textOf(tokenAt(node, "Text")!) }),
  allow: (node, _, stated) => ({
    kind: "allow",
    ...stated,
    code: buildCode(tokenAt(node, "group")!, tokenAt(node, "rule")!),
    reason: textOf(tokenAt(node, "Text")!),
  }),
  tile: (node, tree, stated) => ({
    kind: "tile",
    ...stated,
    name: nameOf(node),
    title: titleOf(node),
    body: tree.body(node, "tileStatement") as S.TilePart[],
  }),
  trim: (node, tree, stated) => ({
    kind: "trim",
    ...stated,
    name: nameOf(node),
    title: titleOf(node),
    body: tree.body(node, "trimStatement") as S.TrimPart[],
  }),
  face: (node, tree, stated) => ({ kind: "face", ...stated, ...tree.pair(node) }),
  thickness: measured("thickness"),
  variation: measured("variation"),
  warpage: measured("warpage"),
  edges: (node, _, stated) => ({
    kind: "edges",
    ...stated,
    finish: tokenAt(node, "finish")!.image as S.EdgesStatement["finish"],
  }),
  box: measured("box"),
  directional: (_node, _tree, stated) => ({ kind: "directional", ...stated }),
  lot: (node, _, stated) => ({ kind: "lot", ...stated, lot: textOf(tokenAt(node, "Text")!) }),
  tilePrice: price,
  trimPrice: price,
  bagPrice: price,
  tubePrice: price,
  breakage: (node, tree, stated) => ({
    kind: "breakage",
    ...stated,
    percent: tree.number(node),
  }),
  spares: measured("spares"),
  saw: (node, tree, stated) => ({
    kind: "saw",
    ...stated,
    name: null,
    body: tree.body(node, "sawStatement") as S.SawPart[],
  }),
  kerf: measured("kerf"),
  rip: measured("rip"),
  mortar: supply("mortar", "mortarStatement"),
  notch: (node, tree, stated) => ({ kind: "notch", ...stated, ...tree.pair(node) }),
  mortarBag: (node, tree, stated) => ({
    kind: "bag",
    ...stated,
    mass: tree.amount(node, "mass"),
    covers: tree.amount(node, "area"),
  }),
  backButter: measured("back-butter"),
  grout: supply("grout", "groutStatement"),
  density: (node, tree, stated) => ({ kind: "density", ...stated, density: tree.number(node) }),
  groutBag: (node, tree, stated) => ({
    kind: "bag",
    ...stated,
    mass: tree.amount(node, "mass"),
    covers: null,
  }),
  sealant: supply("sealant", "sealantStatement"),
  tube: (node, tree, stated) => ({
    kind: "tube",
    ...stated,
    volume: tree.amount(node, "volume"),
  }),
  depth: measured("depth"),
  wall: (node, tree, stated) => ({
    kind: "wall",
    ...stated,
    name: nameOf(node),
    title: titleOf(node),
    body: tree.body(node, "wallStatement") as S.WallPart[],
  }),
  size: (node, tree, stated) => ({
    kind: "size",
    ...stated,
    ...tree.pair(node),
    upTo: tree.optionalLength(node, "upTo"),
  }),
  outline: (node, tree, stated) => ({
    kind: "outline",
    ...stated,
    corners: nodesAt(node, "outlineCorner").map((corner) => ({
      x: tree.length(corner, "x"),
      y: tree.length(corner, "y"),
      ...spanOf(corner),
    })),
  }),
  leg: (node, tree, stated) => {
    const meeting = nodeAt(node, "legMeeting");
    const jointNode = nodeAt(node, "edgeJoint");
    return {
      kind: "leg",
      ...stated,
      side: tokenAt(node, "side")!.image as S.LegStatement["side"],
      across: tree.length(node, "across"),
      down: tree.length(node, "down"),
      meets: meeting ? (tokenAt(meeting, "plain")!.image as S.LegStatement["meets"]) : null,
      joint: jointNode ? buildJoint(jointNode, spanOf(jointNode), tree) : null,
    };
  },
  edge: (node, tree, stated) => ({
    kind: "edge",
    ...stated,
    side: meantWord(starterOf(node), SIDES),
    meets: buildMeeting(nodeAt(node, "meeting")!),
    clauses: nodesAt(node, "edgeClause").map((clause) => buildClause(clause, tree)),
  }),
  opening: (node, tree, stated) => ({
    kind: "opening",
    ...stated,
    opening: meantWord(starterOf(node), OPENING_KINDS),
    name: nameOf(node),
    body: tree.body(node, "openingStatement") as S.OpeningPart[],
  }),
  at: (node, tree, stated) => ({
    kind: "at",
    ...stated,
    x: tree.length(node, "x"),
    y: tree.optionalLength(node, "y"),
    xTo: tree.optionalLength(node, "xTo"),
    yTo: tree.optionalLength(node, "yTo"),
  }),
  frame: (node, _, stated) => ({
    kind: "frame",
    ...stated,
    trim: wordOf(tokenAt(node, "Name")!),
    join: tokenAt(node, "join")!.image as S.FrameStatement["join"],
  }),
  inset: measured("inset"),
  movement: measured("movement"),
  fall: measured("fall"),
  untiled: (_node, _tree, stated) => ({ kind: "untiled", ...stated }),
  lining: (node, tree, stated) => {
    const bond = nodeAt(node, "liningBond");
    const offset = bond && tokenAt(bond, "Length");
    return {
      kind: "lining",
      ...stated,
      of: meantWord(starterOf(node), LINING_WORDS),
      tile: wordOf(tokenAt(node, "Name")!),
      bond: bond ? { offset: offset ? buildLiteral(offset, tree.problems) : null } : null,
      joint: tree.optionalLength(node, "expression"),
    };
  },
  hole: (node, tree, stated) => ({
    kind: "hole",
    ...stated,
    name: wordOf(tokenAt(node, "Name")!),
    x: tree.length(node, "x"),
    y: tree.length(node, "y"),
    across: tree.length(node, "across"),
    plate: buildPlate(node, tree),
  }),
  lay: (node, tree, stated) => ({
    kind: "lay",
    ...stated,
    name: nameOf(node),
    body: tree.body(node, "layStatement") as S.LayPart[],
  }),
  covers: (node, tree, stated) => ({
    kind: "covers",
    ...stated,
    from: tokenAt(node, "from")!.image as S.CoversStatement["from"],
    to: tree.length(node),
  }),
  layOver: besideStatement("over"),
  layUnder: besideStatement("under"),
  layCourses: (node, tree, stated) => ({
    kind: "lay-courses",
    ...stated,
    runs: nodesAt(node, "courseRun").map((run) => buildCourseRun(run, tree)),
  }),
  between: measured("between"),
  set: (node, tree, stated) => {
    const joint = nodeAt(node, "setJoint");
    const tops = nodeAt(node, "setTops");
    return {
      kind: "set",
      ...stated,
      first: buildLiteral(tokenAt(node, "first")!, tree.problems),
      last: buildLiteral(tokenAt(node, "last")!, tree.problems),
      joint: joint ? tree.length(joint) : null,
      tops: tops ? nodesAt(tops, "measuredTop").map((top) => buildMeasuredTop(top, tree)) : [],
    };
  },
  bond: (node, tree, stated) => {
    const offset = tokenAt(node, "Length");
    return {
      kind: "bond",
      ...stated,
      offset: offset ? buildLiteral(offset, tree.problems) : null,
    };
  },
  joint: (node, tree, stated) => ({
    kind: "joint",
    ...stated,
    min: tree.length(node, "min"),
    max: tree.optionalLength(node, "max"),
  }),
  across: (node, tree, stated) => ({ kind: "across", ...stated, choice: buildAcross(node, tree) }),
  up: (node, tree, stated) => ({ kind: "up", ...stated, choice: buildUp(node, tree) }),
  prefer: (node, tree, stated) => ({
    kind: "prefer",
    ...stated,
    name: null,
    body: tree.body(node, "preferStatement") as S.PreferStatement["body"],
  }),
  coursesMeet: wish(() => ({ wanted: "courses-meet" })),
  bondGoesOn: wish(() => ({ wanted: "bond-goes-on" })),
  centreOn: wish((node) => ({ wanted: "centre", opening: wordOf(tokenAt(node, "Name")!) })),
  noCut: wish((node, tree) => ({ wanted: "no-cut", under: tree.length(node) })),
  wholeCourses: wish(buildWholeCourses),
  equalEnds: wish(() => ({ wanted: "equal-ends" })),
  fewCuts: wish(() => ({ wanted: "few-cuts" })),
  rules: (node, tree, stated) => ({
    kind: "rules",
    ...stated,
    name: null,
    body: tree.body(node, "rulesStatement") as S.RulesStatement["body"],
  }),
  limit: (node, tree, stated) => ({
    kind: "limit",
    ...stated,
    name: wordOf(starterOf(node)),
    value: (tokenAt(node, "switch")?.image as "on" | "off" | undefined) ?? tree.length(node),
  }),
};

function buildCode(group: IToken, rule: IToken): S.Word {
  const { start } = wordOf(group);
  return { text: `${group.image}/${rule.image}`, start, end: wordOf(rule).end };
}

function buildMeeting(meeting: CstNode): S.WrittenMeeting {
  const corner = nodeAt(meeting, "corner");
  if (corner) {
    const lap = wordOf(tokenAt(corner, "lap")!);
    return {
      kind: "corner",
      wall: wordOf(tokenAt(corner, "Name")!),
      lap: lap as S.Word & { text: "under" | "over" },
    };
  }
  const outside = nodeAt(meeting, "outside");
  if (outside) {
    const wall = wordOf(tokenAt(outside, "Name")!);
    const lap = wordOf(tokenAt(outside, "lap")!);
    return isOver(lap)
      ? { kind: "outside", wall, lap, trim: endTrimOf(outside) }
      : { kind: "outside", wall, lap: lap as S.Word & { text: "under" | "mitre" } };
  }
  const free = nodeAt(meeting, "free");
  if (free) return { kind: "free", trim: endTrimOf(free) };
  const what = tokenAt(meeting, "plain")!.image;
  return { kind: "plain", what: what as (S.WrittenMeeting & { kind: "plain" })["what"] };
}

function isOver(lap: S.Word): lap is S.Word & { text: "over" } {
  return lap.text === "over";
}

function endTrimOf(node: CstNode): S.Word | null {
  const trim = nodeAt(node, "endTrim");
  return trim ? wordOf(tokenAt(trim, "Name")!) : null;
}

function buildClause(clause: CstNode, tree: TreeBuilder): S.EdgeClause {
  const span = spanOf(clause);
  const measuredNode = nodeAt(clause, "measured");
  if (measuredNode) {
    const { start, end } = wordOf(tokenAt(measuredNode, "Measured")!);
    const readings = nodesAt(measuredNode, "reading").map((reading) => ({
      at: tree.length(reading, "at"),
      off: tree.length(reading, "off"),
      ...spanOf(reading),
    }));
    return { kind: "measured", head: { start, end }, readings, ...span };
  }
  return buildJoint(nodeAt(clause, "edgeJoint")!, span, tree);
}

function buildJoint(jointNode: CstNode, span: Span, tree: TreeBuilder): S.JointClause {
  const soft = tokenAt(jointNode, "soft");
  const { start, end } = wordOf(soft ?? tokenAt(jointNode, "hard")!);
  return {
    kind: "joint-clause",
    head: { start, end },
    joint: soft ? "movement" : "joint",
    width: tree.length(jointNode),
    ...span,
  };
}

function buildAcross(node: CstNode, tree: TreeBuilder): S.AcrossStatement["choice"] {
  const full = nodeAt(node, "fullTile");
  if (full) {
    return { kind: "full-tile", from: tokenAt(full, "from")!.image as "left" | "right" };
  }
  const carried = nodeAt(node, "carried");
  if (carried) {
    const wall = wordOf(tokenAt(carried, "Name")!);
    const joint = tokenAt(carried, "joint")?.image as "added" | "swallowed" | undefined;
    return joint ? { kind: "wrapped", wall, joint } : { kind: "mirrored", wall };
  }
  const centred = nodeAt(node, "centred")!;
  const what = tokenAt(centred, "what")!.image as "tile" | "joint";
  const name = tokenAt(centred, "Name");
  if (name) return { kind: "centred-on", what, name: wordOf(name) };
  return { kind: "centred-at", what, x: tree.length(centred) };
}

function buildUp(node: CstNode, tree: TreeBuilder): S.UpStatement["choice"] {
  const full = nodeAt(node, "fullCourse");
  if (!full) return { kind: "joint", y: tree.length(node) };
  const from = tokenAt(full, "from");
  if (from) return { kind: "full-course", from: from.image as "bottom" | "top" };
  return {
    kind: "at-opening",
    relation: tokenAt(full, "relation")!.image as "under" | "over",
    name: wordOf(tokenAt(full, "Name")!),
  };
}

function buildPlate(hole: CstNode, tree: TreeBuilder): S.WrittenPlate | null {
  const plate = nodeAt(hole, "plate");
  if (!plate) return null;
  const up = tree.optionalLength(plate, "up");
  return { across: tree.length(plate, "across"), up, ...spanOf(plate) };
}
