import { wallText, type WallText } from "./wall-text.js";

/**
 * A wall of 24 3/8 x 24 7/8 in with eight courses of 3 in and joints of 1/8 in, started at its lower left
 * corner: the top of course n is planned at 3 n + (n - 1) / 8, so that of course 4 at 12 3/8 in.
 */
export function setText(set: string, parts: WallText = {}): string {
  return wallText({ size: "24 3/8 x 24 7/8", lay: set, ...parts });
}
