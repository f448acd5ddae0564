import type { CstNode, IToken } from "chevrotain";
import type { Problems } from "./build-expression.js";
import { LAY_BUILDS } from "./build-lay.js";
import type { Builds } from "./build-statement.js";
import { measured, starterOf, TreeBuilder } from "./build-statement.js";
import { SOFT_JOINT_BUILDS } from "./build-soft-joint.js";
import { STOCK_BUILDS } from "./build-stock.js";
import { WALL_BUILDS } from "./build-wall.js";
import { WISH_BUILDS } from "./build-wishes.js";
import { textOf, tokenAt, wordOf } from "./cst.js";
import type * as S from "./syntax.js";

/** The plain tree of a parsed text. */
export function buildTree(text: CstNode, problems: Problems): S.PlanStatement[] {
  return new TreeBuilder(problems, BUILDS).body(text, "planStatement") as S.PlanStatement[];
}

/** What stands in blocks of several kinds. */
const SHARED: Builds = {
  allow: (node, _, stated) => ({
    kind: "allow",
    ...stated,
    code: buildCode(tokenAt(node, "group")!, tokenAt(node, "rule")!),
    reason: textOf(tokenAt(node, "Text")!),
  }),
  face: (node, tree, stated) => ({ kind: "face", ...stated, ...tree.pair(node) }),
  thickness: measured("thickness"),
  size: (node, tree, stated) => ({
    kind: "size",
    ...stated,
    ...tree.pair(node),
    upTo: tree.optionalLength(node, "upTo"),
  }),
  movement: measured("movement"),
  depth: measured("depth"),
};

const BUILDS: Builds = {
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
  ...SHARED,
  ...STOCK_BUILDS,
  ...WALL_BUILDS,
  ...LAY_BUILDS,
  ...SOFT_JOINT_BUILDS,
  ...WISH_BUILDS,
};

function buildCode(group: IToken, rule: IToken): S.Word {
  const { start } = wordOf(group);
  return { text: `${group.image}/${rule.image}`, start, end: wordOf(rule).end };
}
