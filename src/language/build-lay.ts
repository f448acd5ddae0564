import type { CstNode } from "chevrotain";
import { buildLiteral } from "./build-expression.js";
import type { Build, Builds, TreeBuilder } from "./build-statement.js";
import { nameOf } from "./build-statement.js";
import { nodeAt, nodesAt, spanOf, tokenAt, wordOf } from "./cst.js";
import type * as S from "./syntax.js";

const besideStatement =
  (relation: "over" | "under"): Build =>
  (node, _, stated) => ({
    kind: "lay-beside",
    ...stated,
    relation,
    lay: wordOf(tokenAt(node, "Name")!),
  });

/** `lay TILE { ... }` and what stands in it; `at` and `set` stand elsewhere too. */
export const LAY_BUILDS: Builds = {
  lay: (node, tree, stated) => ({
    kind: "lay",
    ...stated,
    name: nameOf(node),
    body: tree.body(node, "layStatement") as S.LayPart[],
  }),
  at: (node, tree, stated) => ({
    kind: "at",
    ...stated,
    x: tree.length(node, "x"),
    y: tree.optionalLength(node, "y"),
    xTo: tree.optionalLength(node, "xTo"),
    yTo: tree.optionalLength(node, "yTo"),
  }),
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
};

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
  return buildCentred(nodeAt(node, "centred")!, tree);
}

/** `tile centred on sash`, `joint centred at 20`: in a lay, and in the lining of an opening. */
export function buildCentred(
  centred: CstNode,
  tree: TreeBuilder,
): Extract<S.AcrossStatement["choice"], { readonly kind: "centred-on" | "centred-at" }> {
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
