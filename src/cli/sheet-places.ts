import { mkdirSync, statSync } from "node:fs";
import path from "node:path";
import { Failure, systemReason } from "./failure.js";
import type { SheetFormat } from "./request.js";

/** The formats that a file's ending may name. */
export const SHEET_FORMATS: readonly SheetFormat[] = [
  "pdf",
  "md",
  "json",
  "csv",
  "svg",
  "png",
  "dxf",
];

/** Where a sheet goes: one format to a file, or all to a folder. */
export type SheetPlace =
  { readonly kind: "file"; readonly format: SheetFormat } | { readonly kind: "folder" };

/**
 * What an output's name says: a folder that is there, or a name that ends in a slash or has no ending,
 * is one; else the ending names the format. Throws a Failure at an ending that names none.
 */
export function placeOf(output: string, format: SheetFormat | null, folder: string): SheetPlace {
  if (output !== "-" && isFolder(path.resolve(folder, output))) return { kind: "folder" };
  if (format !== null) return { kind: "file", format };
  const ending = path.extname(output).slice(1).toLowerCase();
  const found = SHEET_FORMATS.find((each) => each === ending);
  if (found) return { kind: "file", format: found };
  if (ending === "" || /[\\/]$/.test(output)) return { kind: "folder" };
  throw new Failure(
    `${output}: no sheet is written as .${ending}`,
    `the endings are ${SHEET_FORMATS.map((each) => `.${each}`).join(" ")}; a folder takes all`,
  );
}

/** `bath.svg` and the part `back` make `bath-back.svg`; a part without a name keeps the file's. */
export function partName(output: string, part: string, alone: boolean): string {
  if (alone || part === "") return output;
  const ending = path.extname(output);
  return `${output.slice(0, output.length - ending.length)}-${part}${ending}`;
}

/** Makes a folder where there is none. Throws a Failure. */
export function makeFolder(folder: string, shown: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw new Failure(`${shown} can't be a folder: ${systemReason(error)}`);
  }
}

function isFolder(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.isDirectory() === true;
}
