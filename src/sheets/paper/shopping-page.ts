import { counted } from "../../measure/index.js";
import { plainText } from "../../drawing/index.js";
import type { SawWork, TilesToCome, TileTakeoff } from "../../takeoff/index.js";
import { areaWords, moneyWords, percentWords } from "../purchases/amounts.js";
import { fromUsedWords, type Purchase, purchasesOf } from "../purchases/purchases.js";
import { NONE, section, table, tableOfSome, text } from "./blocks.js";
import type { Ground } from "./ground.js";
import type { Block, Page } from "./paper.js";
import { titleOf } from "./words.js";

/** What to buy, and why so much. */
export function shoppingPage(ground: Ground): Omit<Page, "id"> {
  const { solved, takeoff } = ground;
  const purchases = purchasesOf(solved.plan, takeoff);
  const blocks: Block[] = [
    ...(purchases.length === 0 ? [text("Nothing is laid, so nothing is bought.")] : []),
    ...purchaseBlocks(purchases),
    ...section(
      "Why so many tiles",
      takeoff.tiles.map((taken) => text(tileWords(taken))),
    ),
    ...section("Waste", wasteBlocks(ground)),
    ...section("Saw", sawBlocks(ground)),
  ];
  return { title: "Shopping list", wall: null, blocks };
}

function purchaseBlocks(purchases: readonly Purchase[]): Block[] {
  const priced = purchases.filter(({ cost }) => cost !== null);
  const columns = ["What", "Lot", ">Buy", "Needed", "How it comes about"];
  const total = priced.reduce((sum, { cost }) => sum + cost!, 0);
  return [
    ...tableOfSome(
      "To buy",
      priced.length > 0 ? [...columns, ">Cost"] : columns,
      purchases.map((purchase) => purchaseRow(purchase, priced.length > 0)),
    ),
    ...(priced.length === 0
      ? []
      : [
          text(
            `Cost of what the plan gives a price for: ${moneyWords(total)}, in the plan's own money. ` +
              `${counted(purchases.length - priced.length, "line")} without a price.`,
          ),
        ]),
  ];
}

function purchaseRow(purchase: Purchase, priced: boolean): string[] {
  const { kind, title, lot, count, unit, amount, why, cost } = purchase;
  const cells = [
    title === "" ? kind : kind === "tile" || kind === "trim" ? title : `${kind}: ${title}`,
    lot === null ? NONE : plainText(lot),
    count === null || unit === null ? NONE : countWords(count, unit),
    amount,
    why,
  ];
  return priced ? [...cells, cost === null ? NONE : moneyWords(cost)] : cells;
}

export function countWords(count: number, unit: NonNullable<Purchase["unit"]>): string {
  return unit === "box" ? counted(count, "box", "boxes") : counted(count, unit);
}

/** From whole tiles to boxes, a clause a step; what the plan doesn't ask for is told too. */
function tileWords(taken: TileTakeoff): string {
  const { tile, whole, cut, cutBound, needed, toCome } = taken;
  const { breakage, spares, boxes, bought } = toCome ?? taken;
  const pieces = cut.reduce((count, { pieces: some }) => count + some.length, 0);
  const best =
    cut.length === cutBound
      ? "no way of cutting needs fewer"
      : `no way of cutting needs fewer than ${cutBound}`;
  return [
    `${titleOf(tile)}: ${counted(whole, "whole tile")} and ${counted(cut.length, "tile")} cut up into ` +
      `${counted(pieces, "piece")} (${best}): ${needed} needed.`,
    ...(toCome ? [usedWords(toCome)] : []),
    breakage > 0 ? `${breakage} more for breakage.` : "The plan allows for no breakage.",
    spares > 0 ? `${spares} spare, of the same lot, to keep.` : "The plan asks for no spares.",
    boxes
      ? `${counted(boxes.count, "box", "boxes")} of ${boxes.of} make ${bought}: ${boxes.over} over.`
      : `The plan doesn't say how many are in a box: ${bought} pieces.`,
    tile.lot === null ? "Have all of one lot." : `All of lot ${plainText(tile.lot)}.`,
  ].join(" ");
}

/** What is set is bought; what is at hand besides, no plan knows. */
function usedWords(toCome: TilesToCome): string {
  const { used, needed, fromUsed } = toCome;
  return [
    `${used} of them ${used === 1 ? "is" : "are"} used: they are on the wall, whole or in part. ${needed} still to come`,
    ...(fromUsed > 0 ? [`; ${fromUsedWords(toCome)}`] : []),
    ". What of it is at hand already is to be taken off.",
  ].join("");
}

/** In four parts, never as one percentage. */
function wasteBlocks({ takeoff, solved }: Ground): Block[] {
  const { units } = solved.plan;
  const rows = takeoff.tiles.map((taken) => {
    const { set, offcuts, kerf, cutOut } = taken.doubleArea;
    const waste = offcuts + kerf + cutOut;
    return [
      titleOf(taken.tile),
      `${areaWords(waste, units)}, ${percentWords(waste, set + waste)} of what is needed; ` +
        `${areaWords(kerf, units)} of it kerf`,
      `${taken.breakage}`,
      `${taken.boxes?.over ?? 0}`,
      `${taken.spares}`,
    ];
  });
  if (rows.length === 0) return [];
  return [
    table(
      "Where the tile goes that is not on the wall",
      ["Tile", "Offcuts", ">Breakage, tiles", ">Filling the last box, tiles", ">Spares, tiles"],
      rows,
    ),
  ];
}

function sawBlocks({ takeoff: { saw, tiles }, length }: Ground): Block[] {
  if (tiles.length === 0) return [];
  const stated = saw.kerfStated ? "as the plan says" : "common practice; the plan names none";
  return [
    text(
      `${counted(saw.passes, "straight pass", "straight passes")}, ${counted(saw.holes, "hole")}, ` +
        `${counted(saw.mitres, "mitre")}${edgesWords(saw, length)}. Reckoned with a kerf of ${length(saw.kerf)} (${stated}).`,
    ),
  ];
}

function edgesWords({ mitredEdges, mitreLength }: SawWork, length: Ground["length"]): string {
  if (mitredEdges === 0) return "";
  return ` of trim, ${counted(mitredEdges, "mitred edge")} of tile (${length(mitreLength)} in all)`;
}
