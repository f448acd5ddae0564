import type { Step } from "./piece-walk.js";

/** What a key does on the picture. */
export type KeyAct =
  | { readonly act: "pan"; readonly dx: number; readonly dy: number }
  | { readonly act: "zoom"; readonly factor: number }
  | { readonly act: "step"; readonly step: Step }
  | { readonly act: "wall"; readonly by: -1 | 1 }
  | { readonly act: "fit" | "width" | "actual" | "walk" | "stop" | "select" };

/** Pixels that a key moves the picture; with Shift, these times as many. */
const PAN = 60;
const PAN_FAST = 4;
const ZOOM = 1.25;

const STEPS: Readonly<Record<string, Step>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
  Home: "first",
  End: "last",
};

const PANS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [PAN, 0],
  ArrowRight: [-PAN, 0],
  ArrowUp: [0, PAN],
  ArrowDown: [0, -PAN],
};

const PLAIN: Readonly<Record<string, KeyAct>> = {
  "+": { act: "zoom", factor: ZOOM },
  "=": { act: "zoom", factor: ZOOM },
  "-": { act: "zoom", factor: 1 / ZOOM },
  "0": { act: "fit" },
  "1": { act: "actual" },
  w: { act: "width" },
  p: { act: "walk" },
};

const WALKING: Readonly<Record<string, KeyAct>> = {
  PageUp: { act: "wall", by: -1 },
  PageDown: { act: "wall", by: 1 },
  Enter: { act: "select" },
  Escape: { act: "stop" },
  p: { act: "stop" },
};

/** What a key does, or null when it is not the picture's. `walking`: from piece to piece. */
export function actOfKey(key: string, shift: boolean, walking: boolean): KeyAct | null {
  const name = key.length === 1 ? key.toLowerCase() : key;
  if (walking) {
    if (Object.hasOwn(STEPS, name)) return { act: "step", step: STEPS[name]! };
    if (Object.hasOwn(WALKING, name)) return WALKING[name]!;
  } else if (Object.hasOwn(PANS, name)) {
    const [dx, dy] = PANS[name]!;
    const fast = shift ? PAN_FAST : 1;
    return { act: "pan", dx: dx * fast, dy: dy * fast };
  }
  return Object.hasOwn(PLAIN, name) ? PLAIN[name]! : null;
}

/** How a picture is seen, as far as keys change it. */
export interface KeySight {
  panBy(dx: number, dy: number): void;
  zoom(factor: number): void;
  fit(hold: "whole" | "width"): void;
  actualSize(): void;
}

/** Does what an act does to the way a picture is seen; false where it does something else. */
export function lookBy(act: KeyAct, sight: KeySight): boolean {
  switch (act.act) {
    case "pan":
      sight.panBy(act.dx, act.dy);
      return true;
    case "zoom":
      sight.zoom(act.factor);
      return true;
    case "fit":
      sight.fit("whole");
      return true;
    case "width":
      sight.fit("width");
      return true;
    case "actual":
      sight.actualSize();
      return true;
    default:
      return false;
  }
}
