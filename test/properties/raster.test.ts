import { Resvg } from "@resvg/resvg-js";
import { registerWindow, SVG } from "@svgdotjs/svg.js";
import assert from "node:assert/strict";
import { createSVGWindow } from "svgdom";
import { draw, type PieceKind } from "../../src/drawing/index.js";
import { run } from "../../src/engine.js";
import { doublePieceArea, type SolvedPlan } from "../../src/solver/index.js";
import { exampleSource, exampleText } from "../support/examples.js";
import { printSketch } from "../support/print-sketch.js";
import { randomSketch } from "../support/random-sketch.js";
import { ALONE } from "../support/solve-text.js";

const PIECES: ReadonlySet<PieceKind> = new Set([
  "whole",
  "cut",
  "notch",
  "scribe",
  "hole",
  "sliver",
] as const);
/** Pixels along the longer side of a picture. */
const SIDE = 2400;
/** The rasteriser samples four lines a pixel: an edge is off by at most a quarter of each pixel it meets. */
const OFF = 1 / 4;

describe("the tiled area of a picture, in pixels", () => {
  for (const name of ["back-wall", "niche-wall", "three-walls"]) {
    it(`is the model's: ${name}`, () => {
      const file = `${name}.tileplan`;
      compare(exampleText(file), exampleSource(file));
    });
  }

  it("is the model's: twenty random walls", () => {
    for (let seed = 0; seed < 20; seed++) compare(printSketch(randomSketch(seed), "mm"), ALONE);
  });
});

function compare(text: string, source: typeof ALONE): void {
  const outcome = run(text, source);
  const scene = outcome.scene();
  const { view } = scene;
  const scale = SIDE / Math.max(view.right - view.left, view.bottom - view.top);
  const { covered, edge } = countPixels(piecesAlone(scene), scale);
  const expected = (pieceArea(outcome.solved) / 1e12) * scale ** 2;
  const off = Math.abs(covered - expected);
  assert.ok(expected > 0 && edge < covered, text);
  assert.ok(
    off <= OFF * edge,
    `${covered} pixels, ${expected} expected, ${OFF * edge} allowed off\n${text}`,
  );
}

/** The picture with nothing but its pieces, in black. */
function piecesAlone(scene: ReturnType<ReturnType<typeof run>["scene"]>): string {
  const window = createSVGWindow();
  registerWindow(window, window.document);
  const root = SVG(window.document.documentElement as unknown as SVGSVGElement);
  draw(scene, root);
  for (const child of root.children()) if (child.attr("data-wall") === undefined) child.remove();
  for (const wall of root.children()) {
    for (const child of wall.children()) {
      if (!PIECES.has(child.attr("data-kind") as PieceKind)) child.remove();
      else child.attr({ fill: "#000000", stroke: null, class: null });
    }
  }
  return root.svg();
}

/** How many pixels are covered, part ones by their part, and how many are covered in part. */
function countPixels(svg: string, scale: number): { covered: number; edge: number } {
  const { pixels } = new Resvg(svg, { fitTo: { mode: "zoom", value: scale } }).render();
  let covered = 0;
  let edge = 0;
  for (let i = 3; i < pixels.length; i += 4) {
    const alpha = pixels[i]!;
    covered += alpha / 255;
    if (alpha > 0 && alpha < 255) edge++;
  }
  return { covered, edge };
}

/** In square nanometres. */
function pieceArea({ walls }: SolvedPlan): number {
  let double = 0n;
  for (const { lays } of walls) {
    for (const { pieces } of lays) {
      for (let i = 0; i < pieces.count; i++) double += doublePieceArea(pieces, i);
    }
  }
  return Number(double / 2n);
}
