import assert from "node:assert/strict";
import { badgeBox } from "../../../src/drawing/badge.js";
import type { PictureBox, Place, Scene, WallScene } from "../../../src/drawing/index.js";
import { boxesOverlap, boxWithin } from "../../../src/drawing/labels.js";

interface Named {
  readonly name: string;
  readonly box: PictureBox;
}

/** The laws of every scene: no text over another or on a line to measure from, nothing clipped, numbers that print short. */
export function checkScene(scene: Scene, what: string): void {
  const texts = textsOf(scene);
  for (const { name, box } of texts) {
    assert.ok(box.left <= box.right && box.top <= box.bottom, `${what}: ${name} has a box`);
    assert.ok(boxWithin(box, scene.view), `${what}: ${name} is inside the picture`);
  }
  const sorted = [...texts].sort((a, b) => a.box.left - b.box.left);
  for (let i = 0; i < sorted.length; i++) {
    for (let j = i + 1; j < sorted.length; j++) {
      const [one, other] = [sorted[i]!, sorted[j]!];
      if (other.box.left >= one.box.right) break;
      assert.ok(!boxesOverlap(one.box, other.box), `${what}: ${one.name} lies over ${other.name}`);
    }
  }
  for (const wall of scene.walls) checkDatumLines(wall, what);
  checkNumbers(scene, what);
}

/** No level or centre line runs through a word beside, over or below its wall. */
function checkDatumLines({ name, labels, lines }: WallScene, what: string): void {
  const datum = lines.filter(({ kind }) => kind === "level" || kind === "centre");
  const words = labels.filter(({ role }) => ["caption", "number", "dimension"].includes(role));
  for (const { kind, points } of datum) {
    const [left, top, right, bottom] = points;
    const run = { left: left!, top: top!, right: right!, bottom: bottom! };
    const crossed = words.find(({ box }) => boxesOverlap(box, run));
    const told = `${what}: ${name}'s ${kind} line runs through ${JSON.stringify(crossed?.text)}`;
    assert.equal(crossed, undefined, told);
  }
}

/** Every text and badge, in the picture's own frame. */
export function textsOf(scene: Scene): Named[] {
  const inWalls = scene.walls.flatMap(({ name, at, labels, badges }) =>
    [...labels.map(labelled), ...badges.map(badged)].map((each) => ({
      name: `${name}'s ${each.name}`,
      box: moved(each.box, at),
    })),
  );
  return [...inWalls, ...scene.labels.map(labelled), ...scene.badges.map(badged)];
}

function labelled({ text, box }: { text: string; box: PictureBox }): Named {
  return { name: JSON.stringify(text), box };
}

function badged(badge: Parameters<typeof badgeBox>[0]): Named {
  return { name: `badge ${badge.number}`, box: badgeBox(badge) };
}

function moved({ left, top, right, bottom }: PictureBox, { x, y }: Place): PictureBox {
  return { left: left + x, right: right + x, top: top + y, bottom: bottom + y };
}

/** Numbers are finite, to the thousandth, and never minus zero. */
function checkNumbers(value: unknown, what: string): void {
  if (typeof value === "number") {
    assert.ok(Number.isFinite(value), `${what}: a number is finite`);
    assert.match(String(value), /^-?\d+(\.\d{1,3})?$/, what);
    assert.ok(!Object.is(value, -0), `${what}: no minus zero`);
  } else if (typeof value === "object" && value !== null) {
    for (const each of Object.values(value)) checkNumbers(each, what);
  }
}
