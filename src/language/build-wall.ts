import type { CstNode } from "chevrotain";
import { OPENING_KINDS } from "../model/index.js";
import { buildLiteral } from "./build-expression.js";
import { buildCentred } from "./build-lay.js";
import type { Builds, TreeBuilder } from "./build-statement.js";
import { meantWord, measured, nameOf, SIDES, starterOf, titleOf } from "./build-statement.js";
import { nodeAt, nodesAt, spanOf, tokenAt, wordOf } from "./cst.js";
import type { Span } from "./line-table.js";
import type * as S from "./syntax.js";
import { LINING_WORDS } from "./vocabulary.js";

/** `wall NAME { ... }`: its edges, openings and holes. */
export const WALL_BUILDS: Builds = {
  wall: (node, tree, stated) => ({
    kind: "wall",
    ...stated,
    name: nameOf(node),
    title: titleOf(node),
    body: tree.body(node, "wallStatement") as S.WallPart[],
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
  frame: (node, _, stated) => ({
    kind: "frame",
    ...stated,
    trim: wordOf(tokenAt(node, "Name")!),
    join: tokenAt(node, "join")!.image as S.FrameStatement["join"],
  }),
  inset: measured("inset"),
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
      across: buildLiningAcross(nodeAt(node, "liningAcross"), tree),
      up: buildLiningUp(nodeAt(node, "liningUp"), tree),
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
};

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

function buildPlate(hole: CstNode, tree: TreeBuilder): S.WrittenPlate | null {
  const plate = nodeAt(hole, "plate");
  if (!plate) return null;
  const up = tree.optionalLength(plate, "up");
  return { across: tree.length(plate, "across"), up, ...spanOf(plate) };
}

function buildLiningAcross(node: CstNode | undefined, tree: TreeBuilder): S.LiningAcross | null {
  if (!node) return null;
  const full = nodeAt(node, "liningTile");
  const from = full && (tokenAt(full, "from")!.image as "left" | "right" | "front" | "back");
  const choice = from
    ? ({ kind: "full-tile", from } as const)
    : buildCentred(nodeAt(node, "centred")!, tree);
  return { choice, ...spanOf(node) };
}

function buildLiningUp(node: CstNode | undefined, tree: TreeBuilder): S.LiningUp | null {
  if (!node) return null;
  const full = nodeAt(node, "liningCourse");
  const from = full && (tokenAt(full, "from")!.image as "bottom" | "top" | "front" | "back");
  const choice = from
    ? ({ kind: "full-course", from } as const)
    : ({ kind: "joint", y: tree.length(node) } as const);
  return { choice, ...spanOf(node) };
}
