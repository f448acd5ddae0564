import { counted, formatMoney } from "../measure/index.js";
import { edgeTrim, type Tile, type Trim } from "../model/index.js";
import type { SolvedPlan, TrimRun } from "../solver/index.js";
import type { Figures } from "./figures.js";
import { heading, lines, paragraphs, plain } from "./markdown.js";
import { takenOf } from "./taken.js";

/** A tile in figures, and how many pieces of it each wall takes. */
export function hoverTile(tile: Tile, solved: SolvedPlan, figures: Figures): string {
  const { face, thickness, variation, warpage, edges, directional, box } = tile;
  const laid = solved.walls.flatMap(({ wall, lays }) =>
    lays
      .filter(({ lay }) => lay.tile === tile)
      .map(({ pieces }) => `${plain(wall.name)}: ${counted(pieces.count, "piece")}`),
  );
  return paragraphs([
    heading("tile", tile.name, tile.title),
    lines([
      `face ${figures.size(face.across, face.up)}, ${figures.length(thickness)} thick`,
      variation === null ? null : `varies by ${figures.length(variation)}`,
      warpage === null ? null : `bows by ${figures.length(warpage)}`,
      edges === null ? null : `${edges} edges`,
      directional ? "may not be turned" : null,
      box === null ? null : `${counted(box, "piece")} in a box`,
      boughtWords(tile),
      ...laid,
      neededWords(tile, solved),
    ]),
  ]);
}

/** `needs 385 tiles, 44 of them cut up; 5 boxes, 55 over`; null where the tile isn't laid. */
function neededWords(tile: Tile, solved: SolvedPlan): string | null {
  const taken = takenOf(solved).tiles.find((each) => each.tile === tile);
  if (!taken || taken.needed === 0) return null;
  const { needed, cut, toCome } = taken;
  const { boxes } = toCome ?? taken;
  const bought = boxes
    ? `; ${boxes.count} ${boxes.count === 1 ? "box" : "boxes"}, ${boxes.over} over`
    : "";
  return `needs ${counted(needed, "tile")}, ${cut.length} of them cut up${toCome ? `; ${toCome.used} used, ${toCome.needed} still to come` : ""}${bought}`;
}

/** `lot 7B, 42.50 a box, breakage 3%, 6 spares`; empty where the plan says none of it. */
function boughtWords({ lot, price, breakage, spares }: Tile): string {
  return [
    lot === null ? "" : `lot ${plain(lot)}`,
    price === null ? "" : `${formatMoney(price.hundredths)} a ${price.per}`,
    breakage === null ? "" : `breakage ${(100 * breakage.p) / breakage.q}%`,
    spares === null ? "" : counted(spares, "spare"),
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** A trim in figures, and its runs. */
export function hoverTrim(trim: Trim, { walls }: SolvedPlan, figures: Figures): string {
  const { face, thickness, lot, price } = trim;
  const runs = walls.flatMap(({ trims, wall }) =>
    trims
      .filter((run) => trimOf(run) === trim)
      .map((run) => `${plain(wall.name)}, ${runWords(run, figures)}`),
  );
  return paragraphs([
    heading("trim", trim.name, trim.title),
    `${figures.length(face.along)} long, ${figures.length(face.across)} wide, ${figures.length(thickness)} thick`,
    lines([
      lot === null ? null : `lot ${plain(lot)}`,
      price === null ? null : `${formatMoney(price)} a piece`,
      ...runs,
    ]),
  ]);
}

function trimOf({ along }: TrimRun): Trim | null {
  if ("opening" in along) return along.opening.frame?.trim ?? null;
  return edgeTrim(along.edge.meets);
}

/** `bottom of sash: 5 pieces, 3 uncut, cut to 4 1/2 in`. */
export function runWords({ along, side, pieces }: TrimRun, figures: Figures): string {
  const what = "opening" in along ? `${side} of ${plain(along.opening.name)}` : side;
  const lengths = pieces.filter(({ whole }) => !whole).map(({ length }) => figures.length(length));
  const cut = [...new Set(lengths)];
  const uncut = pieces.length - lengths.length;
  const parts = [counted(pieces.length, "piece"), ...(uncut > 0 ? [`${uncut} uncut`] : [])];
  if (cut.length > 0) parts.push(`cut to ${cut.join(" and ")}`);
  return `${what}: ${parts.join(", ")}`;
}
