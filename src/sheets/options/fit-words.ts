import { counted, type Nm } from "../../measure/index.js";
import type {
  HoleFits,
  JointsMet,
  OpeningFit,
  OpeningFits,
  Place,
  RestHeights,
  StopHeights,
} from "../../solver/index.js";

/** How a length is told. */
export type Print = (nm: Nm) => string;

/** Where an opening that is off the joints would be on them, in lines. */
export function openingFitWords({ isOn, moved, sized }: OpeningFits, print: Print): string[] {
  if (isOn) return ["on the joints"];
  const fit = moved ?? sized;
  if (!fit) return ["off the joints; no place on them is free for it"];
  const first = moved
    ? `off the joints; on them at ${placeWords(moved.at, print)}`
    : `off the joints; on them at ${sizedWords(fit, print)}`;
  const whole =
    moved && sized && !isSameSize(moved, sized)
      ? [`with whole joints round it at ${sizedWords(sized, print)}`]
      : [];
  return [first, ...whole, ...metWords(fit.joints)];
}

/** `1 tile x 2 courses`. */
export function tilesWords({ tiles: { across, up } }: OpeningFit): string {
  return `${counted(across, "tile")} x ${counted(up, "course")}`;
}

/** Where a hole's centre would be in the middle of a tile or a joint; none where nothing whole is near. */
export function holeFitWords({ tile, joint }: HoleFits, print: Print): string[] {
  return [
    ...(tile ? [`middle of a tile at ${placeWords(tile, print)}`] : []),
    ...(joint ? [`middle of a joint at ${placeWords(joint, print)}`] : []),
  ];
}

/** At which heights courses are whole over a bench or a curb, or under a soffit; none where no course would be. */
export function restWords({ edge, isWhole, below, above }: RestHeights, print: Print): string[] {
  const where = edge === "top" ? "begin whole over it" : "end whole under it";
  if (isWhole) return [`courses ${where}`];
  const heights = [below, above].flatMap((height) => (height === null ? [] : [print(height)]));
  return heights.length === 0
    ? []
    : [`courses would ${where} with its ${edge} at ${heights.join(" or ")}`];
}

/** At which heights the wall's last course is whole. */
export function stopWords({ isWhole, below, above }: StopHeights, print: Print): string {
  if (isWhole) return "its last course is whole as it is";
  const heights = below === null ? print(above) : `${print(below)} or ${print(above)}`;
  return `its last course would be whole with the top at ${heights}`;
}

/** The most course numbers that are told one by one. */
const MOST_NUMBERS = 6;

function metWords({ beside, met }: JointsMet): string[] {
  if (met.length === beside.length) return [];
  const numbers = met.length <= MOST_NUMBERS ? ` (${met.join(", ")})` : "";
  return [
    `its upright sides meet joints in ${met.length} of ${beside.length} courses${numbers}: the bond shifts the others`,
  ];
}

function sizedWords(fit: OpeningFit, print: Print): string {
  const { across, up } = fit.size;
  return `${placeWords(fit.at, print)}, size ${print(across)} x ${print(up)} (${tilesWords(fit)})`;
}

function placeWords({ x, y }: Place, print: Print): string {
  return `${print(x)}, ${print(y)}`;
}

function isSameSize(a: OpeningFit, b: OpeningFit): boolean {
  return a.size.across === b.size.across && a.size.up === b.size.up;
}
