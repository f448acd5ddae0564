import type { Tile } from "../../model/index.js";
import type { Cost, TilesBought } from "../takeoff.js";

/** What to buy of a tile of which so many are needed: nothing is added that the plan doesn't state. */
export function purchaseOf(tile: Tile, needed: number): TilesBought {
  const breakage = tile.breakage ? Math.ceil((needed * tile.breakage.p) / tile.breakage.q) : 0;
  const spares = tile.spares ?? 0;
  const wanted = needed + breakage + spares;
  const boxes = tile.box ? boxesOf(wanted, tile.box) : null;
  const bought = boxes ? boxes.count * boxes.of : wanted;
  return { needed, breakage, spares, boxes, bought, cost: costOf(tile, bought, boxes) };
}

function boxesOf(wanted: number, of: number): NonNullable<TilesBought["boxes"]> {
  const count = Math.ceil(wanted / of);
  return { count, of, over: count * of - wanted };
}

/** null when the plan gives no price, or one for boxes without saying what a box holds. */
function costOf({ price }: Tile, bought: number, boxes: TilesBought["boxes"]): Cost | null {
  if (!price) return null;
  if (price.per === "piece") return { hundredths: bought * price.hundredths };
  return boxes && { hundredths: boxes.count * price.hundredths };
}
