import type { Tile, Trim } from "../../model/index.js";
import type { TileStatement, TilePart, TrimStatement } from "../syntax.js";
import { resolveAllows } from "./allows.js";
import { evaluate } from "./evaluate.js";
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
  const tile: Omit<Tile, "name" | "face"> = {
    title: statement.title?.text ?? "",
    thickness,
    variation: variation ? lengthOf(variation.length, "not-negative", scope) : null,
    edges: parts.first("edges")?.finish ?? null,
    box: boxOf(parts, scope),
    directional: false,
    lot: null,
    price: null,
    breakage: null,
    spares: null,
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
  const trim: Omit<Trim, "name" | "face"> = {
    title: statement.title?.text ?? "",
    thickness: thicknessOf(parts, statement, scope),
    lot: null,
    price: null,
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

const LARGEST_BOX = 1_000_000n;

function boxOf(parts: Parts<TilePart>, scope: Scope): number | null {
  const box = parts.first("box");
  const value = box && evaluate(box.length, scope);
  if (!box || !value) return null;
  const { numerator, denominator } = value.amount;
  const isCount = value.kind !== "length" && denominator === 1n;
  if (isCount && numerator > 0n && numerator <= LARGEST_BOX) return Number(numerator);
  const message = "found no number of pieces, wanted a whole number, such as 88";
  scope.report.tell("plan/box", box.length, message);
  return null;
}
