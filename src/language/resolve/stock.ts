import type { Tile, Trim } from "../../model/index.js";
import type { LotStatement, TileStatement, TilePart, TrimStatement } from "../syntax.js";
import { resolveAllows } from "./allows.js";
import { breakageOf, countOf, moneyOf } from "./amounts.js";
import { lengthOf } from "./lengths.js";
import { Parts } from "./parts.js";
import type { Scope } from "./scope.js";

/** Declares a tile. Without a face it is known by name only, and what is laid with it is left out. */
export function resolveTile(statement: TileStatement, scope: Scope): void {
  const { report } = scope;
  const origin = report.origin(statement);
  const parts = new Parts(statement.body, report);
  const faceStatement = parts.need(
    "face",
    statement,
    "found no `face`, wanted the tile's face, such as `face 5 7/8 x 2 7/8`",
  );
  const across = faceStatement && lengthOf(faceStatement.first, "positive", scope);
  const up = faceStatement && lengthOf(faceStatement.second, "positive", scope);
  const thickness = thicknessOf(parts, statement, scope);
  const variation = parts.first("variation");
  const warpage = parts.first("warpage");
  const tile: Omit<Tile, "name" | "face"> = {
    title: statement.title?.text ?? "",
    thickness,
    variation: variation ? lengthOf(variation.length, "not-negative", scope) : null,
    warpage: warpage ? lengthOf(warpage.length, "not-negative", scope) : null,
    edges: parts.first("edges")?.finish ?? null,
    ...boughtTile(parts, scope),
    directional: parts.first("directional") !== undefined,
    allows: resolveAllows(statement.body, report),
    origin,
  };
  if (!statement.name) {
    scope.tiles.loseName();
    return;
  }
  const { text: name } = statement.name;
  const value = across && up ? { ...tile, name, face: { across, up } } : null;
  scope.tiles.declare(statement.name, { value, origin }, report);
}

/** Declares a trim; as with a tile. */
export function resolveTrim(statement: TrimStatement, scope: Scope): void {
  const { report } = scope;
  const origin = report.origin(statement);
  const parts = new Parts(statement.body, report);
  const faceStatement = parts.need(
    "face",
    statement,
    "found no `face`, wanted the trim's face along and across, such as `face 5 7/8 x 1 7/8`",
  );
  const along = faceStatement && lengthOf(faceStatement.first, "positive", scope);
  const across = faceStatement && lengthOf(faceStatement.second, "positive", scope);
  const price = parts.first("price");
  const trim: Omit<Trim, "name" | "face"> = {
    title: statement.title?.text ?? "",
    thickness: thicknessOf(parts, statement, scope),
    lot: lotOf(parts.first("lot"), scope),
    price: price ? moneyOf(price.price, scope) : null,
    allows: resolveAllows(statement.body, report),
    origin,
  };
  if (!statement.name) {
    scope.trims.loseName();
    return;
  }
  const { text: name } = statement.name;
  const value = along && across ? { ...trim, name, face: { along, across } } : null;
  scope.trims.declare(statement.name, { value, origin }, report);
}

/** An untold thickness counts as none, so that the layout still comes out. */
function thicknessOf<Part extends TilePart>(
  parts: Parts<Part>,
  statement: TileStatement | TrimStatement,
  scope: Scope,
): number {
  const kind = "thickness" as Part["kind"] & "thickness";
  const thickness = parts.need(
    kind,
    statement,
    "found no `thickness`, wanted one, such as `thickness 5/16`",
  );
  return (thickness && lengthOf(thickness.length, "positive", scope)) ?? 0;
}

/** How a tile is bought. */
function boughtTile(
  parts: Parts<TilePart>,
  scope: Scope,
): Pick<Tile, "box" | "lot" | "price" | "breakage" | "spares"> {
  const box = parts.first("box");
  const breakage = parts.first("breakage");
  const spares = parts.first("spares");
  return {
    box: box ? countOf(box.length, 1, { code: "plan/box", example: 88 }, scope) : null,
    lot: lotOf(parts.first("lot"), scope),
    price: tilePriceOf(parts, scope),
    breakage: breakage ? breakageOf(breakage, scope) : null,
    spares: spares ? countOf(spares.length, 0, { code: "plan/spares", example: 6 }, scope) : null,
  };
}

function tilePriceOf(parts: Parts<TilePart>, scope: Scope): Tile["price"] {
  const statement = parts.first("price");
  const hundredths = statement && moneyOf(statement.price, scope);
  if (!statement || typeof hundredths !== "number") return null;
  const per = statement.per === "box" ? "box" : "piece";
  if (per === "box" && !parts.first("box") && !parts.isBroken("box")) {
    const message = "found a price a box without `box`, wanted how many pieces are in one";
    scope.report.tell("plan/price", statement.head, message);
  }
  return { hundredths, per };
}

function lotOf(statement: LotStatement | undefined, scope: Scope): string | null {
  if (!statement) return null;
  const lot = statement.lot.text.trim();
  if (lot !== "") return lot;
  const message = 'found no lot, wanted its name in the quotes, such as "7B"';
  scope.report.tell("plan/lot", statement.lot, message);
  return null;
}
