import type { Scene } from "../drawing/index.js";
import { nearestWall, type View } from "./view.js";

/** The switches of what is drawn. */
export const LAYERS = ["dimensions", "labels", "cuts", "soft", "hidden", "notes"] as const;

export type Layer = (typeof LAYERS)[number];

/** What the preview keeps over a reload: told from a wall, since walls move in the picture. */
export interface KeptView {
  /** The wall that x and y are told from, or null: from the picture's own origin. */
  readonly from: string | null;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly hold: View["hold"];
  /** The wall chosen in the strip, or null for all. */
  readonly wall: string | null;
  readonly off: readonly Layer[];
}

export function keepView(
  view: View,
  scene: Scene | null,
  wall: string | null,
  off: readonly Layer[],
): KeptView {
  const near = scene && nearestWall(scene.walls, view);
  const at = near?.at ?? { x: 0, y: 0 };
  const { scale, hold } = view;
  return { from: near?.name ?? null, x: view.x - at.x, y: view.y - at.y, scale, hold, wall, off };
}

/** The view again, in a scene of the same plan. */
export function recallView(kept: KeptView, scene: Scene): View {
  const at = scene.walls.find((wall) => wall.name === kept.from)?.at ?? { x: 0, y: 0 };
  return { x: kept.x + at.x, y: kept.y + at.y, scale: kept.scale, hold: kept.hold };
}

/** What was kept, if it is that: the editor gives back whatever an earlier version stored. */
export function readKeptView(value: unknown): KeptView | null {
  if (typeof value !== "object" || value === null) return null;
  const { from, x, y, scale, hold, wall, off } = value as Record<string, unknown>;
  const sound =
    isNameOrNull(from) &&
    isNameOrNull(wall) &&
    [x, y, scale].every((each) => Number.isFinite(each)) &&
    (scale as number) > 0 &&
    (hold === "whole" || hold === "width" || hold === "free") &&
    Array.isArray(off);
  if (!sound) return null;
  const layers = LAYERS.filter((layer) => (off as unknown[]).includes(layer));
  return { ...(value as KeptView), off: layers };
}

function isNameOrNull(value: unknown): value is string | null {
  return value === null || typeof value === "string";
}
