import type { Ground } from "../../../src/sheets/paper/ground.js";
import { sheetJson } from "../../../src/sheets/sheet-json/sheet-json.js";

/** As much of a sheet's JSON as the tests look into. */
export interface SheetJson {
  readonly schema: number;
  readonly plan: string;
  readonly revision: string | null;
  readonly order: readonly string[];
  readonly walls: readonly Record<string, never>[];
  readonly [key: string]: unknown;
}

export function sheetText({ solved, diagnostics, takeoff, revision }: Ground): string {
  const facts = { solved, diagnostics, takeoff, revision, shownPath: (file: string) => file };
  return [...sheetJson(facts)].join("");
}

export function readSheet(ground: Ground): SheetJson {
  return JSON.parse(sheetText(ground)) as SheetJson;
}
