import type { Nm } from "../../measure/index.js";
import type { Edge, Side, Step, Wall } from "../../model/index.js";
import {
  boundsOf,
  type Box,
  type Chain,
  cutTile,
  doubleArea,
  doubleShapeArea,
  type Region,
  type Ring,
  ringOf,
  type Shape,
  stepInset,
  subtract,
  tidyRing,
} from "../../solver/index.js";
import { pictureRing } from "../picture.js";
import type { Band } from "../scene.js";

type Sides = Readonly<Record<Side, Chain>>;

/** A ring as it is where steps leave rectangles out of it: its largest part. */
export function aroundSteps(ring: Ring, sides: Sides, steps: readonly Box[]): Ring {
  if (steps.length === 0) return ring;
  const parts = cutTile(boundsOf(ring), sides, { boxes: steps, circles: [] });
  const shapes = parts.map(({ shape, bounds }) => shape ?? { outline: ringOf(bounds), holes: [] });
  const largest = shapes.reduce<Shape | null>(
    (best, each) => (best && doubleShapeArea(best) >= doubleShapeArea(each) ? best : each),
    null,
  );
  return largest && doubleArea(largest.outline) > 0n ? largest.outline : ring;
}

/** The joints along the steps of a wall's outline, each as it lies on the bare wall. */
export function stepBands({ steps }: Wall, region: Region, bare: Sides): Band[] {
  return steps.flatMap((step, i) => {
    const grown = region.steps[i]!;
    return (["left", "right", "bottom", "top"] as const).flatMap((side): Band[] => {
      const edge = step.meets[side];
      const kind = edge && kindOf(edge);
      const strip = stripOf(step, grown, side);
      if (!kind || strip.left >= strip.right || strip.bottom >= strip.top) return [];
      const parts = cutTile(strip, bare, { boxes: steps, circles: [] });
      return parts.map(({ shape, bounds }, part) => ({
        kind,
        part: `step-${i + 1}-${side}${part === 0 ? "" : `-${part + 1}`}`,
        rings: [shape?.outline ?? ringOf(bounds), ...(shape?.holes ?? [])].map(pictureRing),
      }));
    });
  });
}

/** The joints along the risers of a wall's outline, up to the tile over the slope that ends there. */
export function riserBands(
  { risers, steps }: Wall,
  region: Region,
  bare: Sides,
  joint: Nm,
): Band[] {
  return risers.flatMap(({ of, x, edge }, i): Band[] => {
    const kind = kindOf(edge);
    const width = stepInset(edge, joint);
    if (!kind || width === 0) return [];
    const chain = region[of];
    const across =
      edge.side === "left" ? { left: x, right: x + width } : { left: x - width, right: x };
    const box = {
      ...across,
      bottom: Math.min(...bare.bottom.value),
      top: Math.max(...bare.top.value),
    };
    const sides = of === "bottom" ? { ...bare, top: chain } : { ...bare, bottom: chain };
    return cutTile(box, sides, { boxes: steps, circles: [] }).map(({ shape, bounds }, part) => ({
      kind,
      part: `riser-${i + 1}${part === 0 ? "" : `-${part + 1}`}`,
      rings: [shape?.outline ?? ringOf(bounds), ...(shape?.holes ?? [])].map(pictureRing),
    }));
  });
}

/** What of a side's band lies on the wall, clear of its steps. */
export function clearOfSteps(band: Ring, steps: readonly Box[]): Ring[] {
  if (steps.length === 0) return [band];
  const outline = tidyRing(doubleArea(band) < 0n ? turnedRound(band) : band);
  if (!outline) return [];
  return subtract({ outline, holes: [] }, steps.map(ringOf)).flatMap(({ outline: ring, holes }) => [
    ring,
    ...holes,
  ]);
}

function turnedRound(ring: Ring): Ring {
  const turned: number[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) turned.push(ring[i]!, ring[i + 1]!);
  return turned;
}

function kindOf({ meets, joint }: Edge): Band["kind"] | null {
  if (meets.kind === "free") return meets.trim ? "grout" : null;
  if (!joint || joint.width === 0) return null;
  return joint.kind === "movement" ? "soft" : "grout";
}

/** Between a step and the tile at one side of it, as long as the grown step is. */
function stripOf(step: Step, grown: Box, side: Side): Box {
  switch (side) {
    case "left":
      return { ...grown, right: step.left };
    case "right":
      return { ...grown, left: step.right };
    case "bottom":
      return { ...grown, top: step.bottom };
    case "top":
      return { ...grown, bottom: step.top };
  }
}
