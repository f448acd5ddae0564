import { BADGE_RADIUS } from "../badge.js";
import { rounded } from "../picture.js";
import type { Badge, PictureBox, Place, Swatch, SwatchKind, WallScene } from "../scene.js";
import { plainText } from "../plain-text.js";
import type { FindingGroup } from "./finding-groups.js";
import { listBlock, type Block, type BlockForm } from "./list-block.js";

const SWATCH = { across: 2.1, up: 1.05 };

const LEGEND_WORDS: readonly (readonly [SwatchKind, string])[] = [
  ["whole", "whole tile"],
  ["cut", "cut piece: end, rip or both"],
  ["notch", "notched piece: L or U cut"],
  ["scribe", "scribed piece: cut along a slope"],
  ["hole", "piece cut round a hole"],
  ["sliver", "sliver: a side under the limit"],
  ["trim", "trim"],
  ["grout", "joint"],
  ["soft", "soft (movement) joint"],
  ["hidden", "covered by the next wall's tile"],
  ["build", "the next wall's tile and bed, on end"],
  ["level", "level line (datum)"],
  ["centre", "centre line of the bare wall"],
  ["set", "top of what is set already"],
];

/** The samples of what occurs in these walls, and nothing else. */
export function legendBlock(walls: readonly Omit<WallScene, "at">[], form: BlockForm): Block {
  const { em } = form;
  const occurs = occurringKinds(walls);
  const rows = LEGEND_WORDS.filter(([kind]) => occurs.has(kind));
  return listBlock("Legend", rows, form, ([kind, words], place) => ({
    words,
    indent: (SWATCH.across + 0.7) * em,
    role: "note",
    swatches: [swatchAt(kind, place, em)],
    badges: [],
  }));
}

/** The findings, each with its number. */
export function findingsBlock(
  groups: readonly FindingGroup[],
  untold: number,
  severalWalls: boolean,
  form: BlockForm,
): Block {
  const { em } = form;
  const more = untold > 0 ? [`and ${untold} more`] : [];
  return listBlock("Findings", [...groups, ...more], form, (item, place) => {
    const plain = { indent: 2 * em, role: "note", swatches: [] } as const;
    if (typeof item === "string") return { ...plain, words: item, badges: [] };
    const badge: Badge = {
      severity: item.severity,
      middle: { x: rounded(place.x + 0.75 * em), y: rounded(place.y) },
      radius: rounded(BADGE_RADIUS * em),
      number: item.number,
    };
    return { ...plain, words: findingWords(item, severalWalls), badges: [badge] };
  });
}

function findingWords({ severity, findings, wall }: FindingGroup, severalWalls: boolean): string {
  const first = findings[0]!;
  const where = severalWalls ? `${plainText(wall)}: ` : "";
  const more = findings.length > 1 ? ` (and ${findings.length - 1} more like it)` : "";
  const grade = severity === "information" ? "note" : severity;
  return `${where}${grade} ${first.code}: ${plainText(first.message)}${more}`;
}

/** Cautions of the trade; figures and sources stand beside the words. */
const CAUTIONS: readonly string[] = [
  // OSHA 29 CFR 1926.1153 Table 1.
  "Cutting tile makes respirable silica dust: cut wet or with extraction, and wear a respirator where one is asked for.",
  // Common practice; flood and cure tests are the membrane maker's.
  "Backing and waterproofing come first: have them sound, cured and tested before tile is set.",
  // IRC R308.4.5, from memory.
  "Glass in or near a tub or shower needs safety glazing.",
  "Follow local code, the makers' instructions and a licensed trade.",
];

export function cautionsBlock(glazed: boolean, form: BlockForm): Block {
  const words = CAUTIONS.filter((line) => glazed || !line.startsWith("Glass")).join(" ");
  return listBlock("Caution", [words], form, (item) => ({
    words: item,
    indent: 0,
    role: "caution",
    swatches: [],
    badges: [],
  }));
}

function swatchAt(kind: SwatchKind, { x, y }: Place, em: number): Swatch {
  const half = (SWATCH.up * em) / 2;
  const box: PictureBox = {
    left: rounded(x),
    right: rounded(x + SWATCH.across * em),
    top: rounded(y - half),
    bottom: rounded(y + half),
  };
  return { kind, box };
}

function occurringKinds(walls: readonly Omit<WallScene, "at">[]): ReadonlySet<SwatchKind> {
  const kinds = new Set<SwatchKind>();
  for (const wall of walls) {
    for (const { kind } of wall.pieces) kinds.add(kind);
    for (const { kind } of wall.bands) kinds.add(kind === "bead" ? "soft" : kind);
    for (const { kind } of wall.lines) if (kind !== "leader") kinds.add(kind);
    if (wall.trims.length > 0) kinds.add("trim");
    if (wall.hidden.length > 0) kinds.add("hidden");
  }
  return kinds;
}
