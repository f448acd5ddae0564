import { readFileSync } from "node:fs";
import path from "node:path";
import { initWasm, Resvg } from "@resvg/resvg-wasm";
import type { FontFiles, Rasterise } from "../sheets/print.js";
import { Failure, systemReason } from "./failure.js";

/** Dots to the inch: a printer's draft, and sharp on a screen. */
export const DOTS_PER_INCH = 150;
const POINTS_PER_INCH = 72;

let started: Promise<void> | null = null;

/**
 * The rasteriser, ready: resvg as WebAssembly, which runs everywhere alike, with the print font alone.
 * `assets` is the folder in which it stands. Throws a Failure when it doesn't.
 */
export async function startRasteriser(assets: string, fonts: FontFiles): Promise<Rasterise> {
  started ??= initWasm(readProgram(path.join(assets, "resvg.wasm")));
  await started;
  const font = {
    fontBuffers: [fonts.regular, fonts.bold],
    defaultFontFamily: "Open Sans",
    sansSerifFamily: "Open Sans",
  };
  return (svg, widthInPoints) => {
    const value = Math.round((widthInPoints / POINTS_PER_INCH) * DOTS_PER_INCH);
    const resvg = new Resvg(svg, { font, fitTo: { mode: "width", value } });
    try {
      return resvg.render().asPng();
    } finally {
      resvg.free();
    }
  };
}

function readProgram(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new Failure(`PNG can't be drawn: ${file} could not be read: ${systemReason(error)}`);
  }
}
