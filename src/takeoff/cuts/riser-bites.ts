import { type Box, rangeBetween, type Region } from "../../solver/index.js";

/**
 * The rectangles that risers of a bottom or a top take out of a piece with these bounds: behind each riser as far as its
 * side is level, or slopes, there; what a slope takes besides is a taper.
 */
export function riserBites({ bottom, top }: Pick<Region, "bottom" | "top">, piece: Box): Box[] {
  const bites = ([bottom, top] as const).flatMap(({ at, value }, k) => {
    const chain = { at, value };
    return at.flatMap((x, i): Box[] => {
      if (x !== at[i - 1] || x <= piece.left || x >= piece.right) return [];
      // No wall is under a bottom and over a top: left of where a bottom falls, or a top rises.
      const isLeft = k === 0 ? value[i - 1]! > value[i]! : value[i - 1]! < value[i]!;
      const across = isLeft ? { left: piece.left, right: x } : { left: x, right: piece.right };
      const { low, high } = rangeBetween(chain, across.left, across.right);
      return k === 0
        ? [{ ...across, bottom: piece.bottom, top: low }]
        : [{ ...across, bottom: high, top: piece.top }];
    });
  });
  return bites.filter((box) => box.bottom < box.top);
}
