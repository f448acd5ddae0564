import { counted, formatAmount, type Unit } from "../../measure/index.js";
import { ownVolumeWords } from "../../sheets/index.js";
import type { Change, MaterialQuantity, Pair, PieceQuantity, Quantity } from "../comparison.js";

/** What is bought of tile and trim, a line each, then of materials in one; silent where as much is. */
export function quantityWords(quantities: readonly Quantity[], units: Unit): string[] {
  const materials = quantities.flatMap((each) =>
    "amount" in each ? (materialWords(each, units) ?? []) : [],
  );
  return [
    ...quantities.flatMap((each) => ("pieces" in each ? (pieceWords(each) ?? []) : [])),
    ...(materials.length > 0 ? [materials.join("; ")] : []),
  ];
}

function pieceWords({ kind, name, pieces, boxes }: PieceQuantity): string | null {
  if (pieces.before === pieces.after && !differ(boxes)) return null;
  const noun = kind === "tile" ? "tiles needed" : "lengths needed";
  const said = `${kind} ${name.after ?? name.before!}: ${pieces.before} -> ${pieces.after} ${noun}`;
  const { before, after } = boxes;
  if (before === null || after === null) return `${said}, ${moreWords(pieces)}`;
  const held =
    before === after ? `still ${counted(after, "box", "boxes")}` : `boxes ${before} -> ${after}`;
  return `${said}, ${moreWords(pieces)}; ${held}`;
}

/** Told where the rounded figures differ: a hair more of grout is no news. */
function materialWords(
  { kind, of, amount, pack, packs }: MaterialQuantity,
  units: Unit,
): string | null {
  const [old, now] = [amount.before, amount.after].map((whole) =>
    of === "area" ? formatAmount(whole, of, units) : ownVolumeWords(whole, units),
  );
  if (old === now && !differ(packs)) return null;
  const held = pack && differ(packs) ? `, ${pack}s ${packs.before} -> ${packs.after}` : "";
  return `${kind} ${old!} -> ${now!}${held}`;
}

/** Whether boxes, bags or tubes differ, where both plans say what one holds. */
function differ({ before, after }: Change<number>): boolean {
  return before !== null && after !== null && before !== after;
}

function moreWords({ before, after }: Pair<number>): string {
  if (after === before) return "as many";
  return after > before ? `${after - before} more` : `${before - after} fewer`;
}
