import type { CstNode } from "chevrotain";
import type { Build, Builds, TreeBuilder } from "./build-statement.js";
import { tokenAt, wordOf } from "./cst.js";
import type * as S from "./syntax.js";

/** A line of `prefer { ... }`. */
const wish =
  (build: (node: CstNode, tree: TreeBuilder) => S.WrittenWish): Build =>
  (node, tree, stated) => ({ kind: "wish", ...stated, wish: build(node, tree) });

/** `prefer { ... }` and the wishes in it. */
export const WISH_BUILDS: Builds = {
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
};

function buildWholeCourses(node: CstNode): S.WrittenWish {
  const side = tokenAt(node, "side");
  if (side) return { wanted: "whole-courses", at: side.image as "bottom" | "top" };
  const at = tokenAt(node, "edge")!.image as "sill" | "head";
  return { wanted: "whole-courses", at, opening: wordOf(tokenAt(node, "Name")!) };
}
