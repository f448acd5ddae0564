import { BADGE_RADIUS } from "../badge.js";
import { lineHeight, makeLabel } from "../labels.js";
import { rounded } from "../picture.js";
import type { Badge, Label, PictureBox, Place, Swatch, SwatchKind, WallScene } from "../scene.js";
import { wrapText } from "../text-metrics.js";
import { plainText } from "../plain-text.js";
import type { FindingGroup } from "./finding-groups.js";
import type { Setting } from "./setting.js";

/** A block of text with its samples and badges, from its own upper left corner. */
export interface Block {
  readonly labels: readonly Label[];
  readonly swatches: readonly Swatch[];
  readonly badges: readonly Badge[];
  readonly width: number;
  readonly height: number;
}

const SIZE = 0.9;
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
];

/** The samples of what occurs in these walls, and nothing else. */
export function legendBlock(
  walls: readonly Omit<WallScene, "at">[],
  width: number,
  setting: Setting,
): Block {
  const { em } = setting;
  const occurs = occurringKinds(walls);
  const rows = LEGEND_WORDS.filter(([kind]) => occurs.has(kind));
  return listBlock("Legend", width, em, rows, ([kind, words], place) => ({
    words,
    indent: (SWATCH.across + 0.7) * em,
    swatches: [swatchAt(kind, place, em)],
    badges: [],
  }));
}

/** The findings, each with its number. */
export function findingsBlock(
  groups: readonly FindingGroup[],
  untold: number,
  severalWalls: boolean,
  width: number,
  { em }: Setting,
): Block {
  const more = untold > 0 ? [`and ${untold} more`] : [];
  return listBlock("Findings", width, em, [...groups, ...more], (item, place) => {
    const indent = 2 * em;
    if (typeof item === "string") return { words: item, indent, swatches: [], badges: [] };
    const badge: Badge = {
      severity: item.severity,
      middle: { x: rounded(place.x + 0.75 * em), y: rounded(place.y) },
      radius: rounded(BADGE_RADIUS * em),
      number: item.number,
    };
    return {
      words: findingWords(item, severalWalls),
      indent,
      swatches: [],
      badges: [badge],
    };
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

export function cautionsBlock(glazed: boolean, width: number, { em }: Setting): Block {
  const words = CAUTIONS.filter((line) => glazed || !line.startsWith("Glass")).join(" ");
  return listBlock("Caution", width, em, [words], (item) => ({
    words: item,
    indent: 0,
    swatches: [],
    badges: [],
  }));
}

interface ListItem {
  readonly words: string;
  readonly indent: number;
  readonly swatches: readonly Swatch[];
  readonly badges: readonly Badge[];
}

/** A heading and its items, each wrapped; `itemAt` is given the middle of the item's first line. */
function listBlock<T>(
  heading: string,
  width: number,
  em: number,
  items: readonly T[],
  itemAt: (item: T, place: Place) => ListItem,
): Block {
  const size = SIZE * em;
  const step = lineHeight(size) * 1.04;
  const labels: Label[] = [
    makeLabel({
      text: heading,
      role: "heading",
      x: 0,
      y: 0.7 * em,
      size: em,
      anchor: "start",
      bold: true,
    }),
  ];
  const swatches: Swatch[] = [];
  const badges: Badge[] = [];
  let y = 2.35 * em;
  for (const item of items) {
    const laid = itemAt(item, { x: 0, y });
    swatches.push(...laid.swatches);
    badges.push(...laid.badges);
    for (const text of wrapText(laid.words, width - laid.indent, size)) {
      const role = heading === "Caution" ? "caution" : "note";
      labels.push(makeLabel({ text, role, x: laid.indent, y, size, anchor: "start" }));
      y += step;
    }
    y += 0.35 * em;
  }
  return { labels, swatches, badges, width, height: y - 0.6 * em };
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
