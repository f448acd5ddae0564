import type { Build, Builds } from "./build-statement.js";
import { measured, nameOf, titleOf } from "./build-statement.js";
import { textOf, tokenAt } from "./cst.js";
import type * as S from "./syntax.js";

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

/** What is bought and what it is cut with: tiles, trims, saw, mortar, grout, sealant. */
export const STOCK_BUILDS: Builds = {
  tile: (node, tree, stated) => ({
    kind: "tile",
    ...stated,
    name: nameOf(node),
    title: titleOf(node),
    body: tree.body(node, "tileStatement") as S.TilePart[],
  }),
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
  breakage: (node, tree, stated) => ({
    kind: "breakage",
    ...stated,
    percent: tree.number(node),
  }),
  spares: measured("spares"),
  trim: (node, tree, stated) => ({
    kind: "trim",
    ...stated,
    name: nameOf(node),
    title: titleOf(node),
    body: tree.body(node, "trimStatement") as S.TrimPart[],
  }),
  trimPrice: price,
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
  bagPrice: price,
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
  tubePrice: price,
};
