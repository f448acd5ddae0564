import type { Nm } from "../measure/index.js";
import type { Box } from "./box.js";
import type { Chain } from "./chain.js";
import type { Region } from "./solved.js";

/** Whether two regions take the same of their walls, whatever takes it. */
export function isSameRegion(a: Region, b: Region): boolean {
  return (
    isSameBox(a.bounds, b.bounds) &&
    a.between.left === b.between.left &&
    a.between.right === b.between.right &&
    SIDES.every((side) => isSameSide(a[side], b[side])) &&
    areSame(boxesOf(a), boxesOf(b), isSameBox) &&
    areSame(circlesOf(a), circlesOf(b), isSameBox)
  );
}

const SIDES = [
  "left",
  "right",
  "bottom",
  "top",
  "hiddenLeft",
  "hiddenRight",
  "hiddenBottom",
  "hiddenTop",
] as const satisfies readonly (keyof Region)[];

function isSameSide(a: Chain | null, b: Chain | null): boolean {
  if (!a || !b) return a === b;
  return areSame(a.at, b.at, isSame) && areSame(a.value, b.value, isSame);
}

const boxesOf = ({ takeaways, steps }: Region): readonly Box[] => [
  ...takeaways.map(({ box }) => box),
  ...steps,
];

const circlesOf = ({ roundHoles }: Region): readonly Box[] => roundHoles.map(({ box }) => box);

function isSameBox(a: Box, b: Box): boolean {
  return a.left === b.left && a.bottom === b.bottom && a.right === b.right && a.top === b.top;
}

const isSame = (a: Nm, b: Nm): boolean => a === b;

function areSame<T>(a: readonly T[], b: readonly T[], same: (a: T, b: T) => boolean): boolean {
  return a.length === b.length && a.every((one, i) => same(one, b[i]!));
}
