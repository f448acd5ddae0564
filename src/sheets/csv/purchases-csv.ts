import { plainText } from "../../drawing/index.js";
import type { SolvedPlan } from "../../solver/index.js";
import type { Takeoff } from "../../takeoff/index.js";
import { type Purchase, purchasesOf } from "../purchases/purchases.js";
import { type Cell, spreadsheet } from "./spreadsheet.js";

const COLUMNS = ["Kind", "What", "Lot", "Buy", "Unit", "Needed", "How it comes about", "Cost"];

const HUNDREDTHS = 100;

/** The shopping list, a row a thing to buy; empty where the plan doesn't say. */
export function purchasesCsv({ plan }: SolvedPlan, takeoff: Takeoff): Generator<string> {
  return spreadsheet(COLUMNS, [purchasesOf(plan, takeoff).map(purchaseCells)]);
}

function purchaseCells({ kind, title, lot, count, unit, amount, why, cost }: Purchase): Cell[] {
  const named = lot === null ? null : plainText(lot);
  return [kind, title, named, count, unit, amount, why, cost === null ? null : cost / HUNDREDTHS];
}
