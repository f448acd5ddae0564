/** One colour of the picture, in each way that the picture can be seen. */
export interface Tone {
  readonly light: string;
  readonly dark: string;
  /** More contrast, and paper: black and white. */
  readonly plain: string;
  /** Where the reader's system names the colours (CSS system colours). */
  readonly forced: string;
}

/**
 * The picture's palette. A host overrides a tone by the custom property `--gaugelath-NAME`. No tone
 * carries a meaning alone: hatches, weights, dashes and shapes say the same.
 */
export const TONES = {
  paper: { light: "#f7f3ea", dark: "#1e2023", plain: "#ffffff", forced: "Canvas" },
  ink: { light: "#2d2a26", dark: "#ebe6da", plain: "#000000", forced: "CanvasText" },
  muted: { light: "#6b645a", dark: "#aba596", plain: "#222222", forced: "CanvasText" },
  hairline: { light: "#b7ad9c", dark: "#5d5a53", plain: "#777777", forced: "GrayText" },
  substrate: { light: "#e7dfcf", dark: "#2a2c30", plain: "#ffffff", forced: "Canvas" },
  grout: { light: "#8f8575", dark: "#0f1012", plain: "#6f6f6f", forced: "CanvasText" },
  soft: { light: "#12656b", dark: "#6fd3d3", plain: "#000000", forced: "LinkText" },
  build: { light: "#cdbfa6", dark: "#57503f", plain: "#dddddd", forced: "Canvas" },
  tile: { light: "#fffdf8", dark: "#5f646c", plain: "#ffffff", forced: "Canvas" },
  cut: { light: "#f0f0e4", dark: "#55605b", plain: "#ffffff", forced: "Canvas" },
  "cut-hatch": { light: "#858b6b", dark: "#a9baae", plain: "#8a8a8a", forced: "CanvasText" },
  notch: { light: "#e4ecef", dark: "#475a68", plain: "#ffffff", forced: "Canvas" },
  "notch-hatch": { light: "#648494", dark: "#a3c6da", plain: "#333333", forced: "CanvasText" },
  scribe: { light: "#f6ead2", dark: "#625640", plain: "#ffffff", forced: "Canvas" },
  "scribe-hatch": { light: "#a27a36", dark: "#e0bf80", plain: "#333333", forced: "CanvasText" },
  hole: { light: "#ece5f0", dark: "#564b66", plain: "#ffffff", forced: "Canvas" },
  "hole-hatch": { light: "#8a71a0", dark: "#c9b3de", plain: "#333333", forced: "CanvasText" },
  sliver: { light: "#f5d6cb", dark: "#6a3a30", plain: "#ffffff", forced: "Canvas" },
  "sliver-hatch": { light: "#a63d24", dark: "#ffab93", plain: "#000000", forced: "CanvasText" },
  trim: { light: "#f1e4c9", dark: "#6b614c", plain: "#f0f0f0", forced: "Canvas" },
  "trim-line": { light: "#8c7748", dark: "#d8c494", plain: "#000000", forced: "CanvasText" },
  window: { light: "#dbe7ea", dark: "#28363c", plain: "#ffffff", forced: "Canvas" },
  niche: { light: "#d9cfbd", dark: "#33302a", plain: "#e4e4e4", forced: "Canvas" },
  door: { light: "#efe8da", dark: "#26282b", plain: "#ffffff", forced: "Canvas" },
  level: { light: "#1f5f99", dark: "#7fbdf0", plain: "#000000", forced: "CanvasText" },
  centre: { light: "#7a4a86", dark: "#cf9fdc", plain: "#000000", forced: "CanvasText" },
  error: { light: "#a8201a", dark: "#ff8f84", plain: "#000000", forced: "CanvasText" },
  warning: { light: "#7d5200", dark: "#ffc861", plain: "#000000", forced: "CanvasText" },
  information: { light: "#2a5a86", dark: "#93c2ee", plain: "#000000", forced: "CanvasText" },
} as const satisfies Record<string, Tone>;

export type ToneName = keyof typeof TONES;

const NAMES = Object.keys(TONES) as ToneName[];

/** Fonts that are found nearly everywhere; texts are measured for the widest of them. */
export const FONTS = "DejaVu Sans, Helvetica, Arial, sans-serif";

/**
 * A joint in its true width is a hair on paper, and printers that round shapes outwards lose it
 * between two white tiles: there, each piece has the finest line round it.
 */
const PRINTED_JOINTS = linesRoundPieces("#555555", "0.25px");

/** Where tile is as white, or as black, as the paper, its edge would be lost where nothing is beside it. */
const SEEN_EDGES = linesRoundPieces("var(--gaugelath-grout,var(--gl-grout))", "0.5px");

function linesRoundPieces(stroke: string, width: string): string {
  return (
    ".gaugelath :is([data-kind=whole],[data-kind=cut],[data-kind=notch],[data-kind=scribe]," +
    `[data-kind=hole]) path{stroke:${stroke};stroke-width:${width};vector-effect:non-scaling-stroke}`
  );
}

/**
 * The picture's style sheet. Every rule stands in an at-rule: a rasteriser that knows no custom
 * properties passes over those and keeps the light colours, which stand as attributes too.
 */
export function styleSheet(): string {
  const uses = NAMES.flatMap((name) => [
    `.gl-fill-${name}{fill:var(--gaugelath-${name},var(--gl-${name}))}`,
    `.gl-stroke-${name}{stroke:var(--gaugelath-${name},var(--gl-${name}))}`,
  ]);
  return [
    "",
    atRule("@media all", [tonesAs("light"), ...uses]),
    atRule("@media (prefers-color-scheme:dark)", [tonesAs("dark")]),
    atRule("@media (prefers-contrast:more)", [tonesAs("plain"), SEEN_EDGES]),
    atRule("@media print", [tonesAs("plain"), PRINTED_JOINTS]),
    atRule("@media (forced-colors:active)", [
      tonesAs("forced"),
      SEEN_EDGES,
      ".gaugelath{forced-color-adjust:none}",
    ]),
    "",
  ].join("\n");
}

/** The palette in one of its ways, for what a selector names: a host may know better than the system. */
export function tonesAs(kind: keyof Tone, selector = ".gaugelath"): string {
  return `${selector}{${NAMES.map((name) => `--gl-${name}:${TONES[name][kind]}`).join(";")}}`;
}

function atRule(query: string, rules: readonly string[]): string {
  return `${query}{\n${rules.join("\n")}\n}`;
}

/** Attributes that fill with a tone: its light colour, and the class by which the sheet changes it. */
export interface Paint {
  readonly fill?: string;
  readonly stroke?: string;
  readonly class: string;
}

export function fillOf(name: ToneName): Paint {
  return { fill: TONES[name].light, class: `gl-fill-${name}` };
}

export function strokeOf(name: ToneName): Paint {
  return { fill: "none", stroke: TONES[name].light, class: `gl-stroke-${name}` };
}

export function fillAndStroke(fill: ToneName, stroke: ToneName): Paint {
  return {
    fill: TONES[fill].light,
    stroke: TONES[stroke].light,
    class: `gl-fill-${fill} gl-stroke-${stroke}`,
  };
}
