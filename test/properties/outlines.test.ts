import assert from "node:assert/strict";
import { NM_PER } from "../../src/measure/index.js";
import { parse, resolve } from "../../src/language/index.js";
import type { Corner } from "../../src/model/index.js";
import {
  doubleRegionArea,
  doubleShapeArea,
  pieceShape,
  type Ring,
  solve,
  type SolvedWall,
} from "../../src/solver/index.js";
import { intersect, ringsOf, subtract } from "../support/clipping.js";
import { randomFrom } from "../support/random.js";
import { type OutlineKind, randomOutline } from "../support/random-outline.js";
import { ALONE } from "../support/solve-text.js";

const WALLS = 60;
const MM = NM_PER.mm;

describe(`${WALLS} random walls with steps, without and with slopes`, () => {
  it("have the outline's area where they have no joints, exactly", () => {
    for (const kind of ["steps", "slope", "risers"] as const) {
      for (const { corners, wall, told } of walls(kind, 0)) {
        const ring = corners.flatMap(({ x, y }) => [x * MM, y * MM]);
        assert.equal(doubleRegionArea(wall.region), areaOf([ring]), told);
      }
    }
  });

  it("are drawn in at every straight edge by the joint, as an outside library has it", () => {
    for (const { corners, wall, told } of walls("steps", 4)) {
      assert.equal(doubleRegionArea(wall.region), areaOf(ringsIn(corners, 4)), told);
    }
  });

  it("have pieces that lie in the region, none over another, and all of it that joints leave", () => {
    for (const { corners, wall, told } of walls("steps", 4)) {
      const region = ringsIn(corners, 4);
      const [lay] = wall.lays;
      assert.ok(lay, told);
      const pieces = piecesOf(wall);
      for (const piece of pieces) {
        assert.deepEqual(subtract(piece, region), [], `${told}: outside`);
      }
      // The joints of a stack bond are what no tile of its lattice covers.
      const { lattice } = lay;
      const tiles: Ring[] = [];
      const [acrossModule, upModule] = [
        lattice.face.across + lattice.joint,
        lattice.face.up + lattice.joint,
      ];
      for (let i = -2; i < 20; i++) {
        for (let j = -2; j < 60; j++) {
          const [x, y] = [lattice.x + i * acrossModule, lattice.y + j * upModule];
          const [r, t] = [x + lattice.face.across, y + lattice.face.up];
          tiles.push([x, y, r, y, r, t, x, t]);
        }
      }
      const joints = subtract(region, tiles).reduce((sum, each) => sum + doubleShapeArea(each), 0n);
      const laid = pieces.reduce((sum, piece) => sum + areaOf(piece), 0n);
      assert.equal(laid + joints, areaOf(region), told);
    }
  });

  it("are cut along a slope as an outside library cuts their tiles", () => {
    for (const { corners, wall, told } of [...walls("slope", 0), ...walls("risers", 0)]) {
      const outline = corners.flatMap(({ x, y }) => [x * MM, y * MM]);
      const { lattice, pieces } = wall.lays[0]!;
      const laid = piecesOf(wall).reduce((sum, piece) => sum + areaOf(piece), 0n);
      let wanted = 0n;
      const rows = new Set(pieces.course);
      for (const row of rows) {
        for (let i = -2; i < 20; i++) {
          const x = lattice.x + i * (lattice.face.across + lattice.joint);
          const y = lattice.y + (row - 1) * (lattice.face.up + lattice.joint);
          const [r, t] = [x + lattice.face.across, y + lattice.face.up];
          wanted += intersect([[x, y, r, y, r, t, x, t]], [outline]).reduce(
            (sum, each) => sum + doubleShapeArea(each),
            0n,
          );
        }
      }
      assert.equal(laid, wanted, told);
    }
  });

  it("keep their tile as far from a slope, and from a riser, as its joint is wide, square to it", () => {
    let nearest = 0;
    for (const { corners, wall, told } of [...walls("slope", 4), ...walls("risers", 4)]) {
      const edges = corners.map((a, i) => [a, corners[(i + 1) % corners.length]!] as const);
      const isSlope = ([from, to]: readonly [Corner, Corner]) => from.x !== to.x && from.y !== to.y;
      for (const [a, b] of edges.filter((edge) => isSlope(edge) || wall.wall.risers.length > 0)) {
        const squares = piecesOf(wall).flatMap((rings) =>
          rings.flatMap((ring) => squaresTo(ring, a, b)),
        );
        const far = BigInt(1000 * MM) ** 2n;
        const least = squares.reduce((low, each) => (each < low ? each : low), far);
        assert.ok(least >= BigInt(4 * MM) ** 2n, told);
        if (least <= BigInt(4 * MM + 6) ** 2n) nearest++;
      }
    }
    assert.ok(nearest > WALLS, "and most have a tile right at it");
  });

  it("are laid as mirrored when they are mirrored", () => {
    for (const { corners, wall, text } of walls("steps", 4)) {
      const width = Math.max(...corners.map(({ x }) => x));
      const turned = corners.map(({ x, y }) => ({ x: width - x, y }));
      const mirrored = solvedOf(turned, 4, "right");
      const across = (each: SolvedWall): number[][] =>
        boxesOf(each).map(([l, b, r, t]) => [width * MM - r!, b!, width * MM - l!, t!]);
      assert.deepEqual(sorted(across(mirrored.wall)), sorted(boxesOf(wall)), text);
    }
  });

  it("are laid as mirrored along slopes and risers, but for the nanometre that corners are rounded by", () => {
    for (const { corners, wall, text } of walls("risers", 4)) {
      const width = Math.max(...corners.map(({ x }) => x));
      const turned = corners.map(({ x, y }) => ({ x: width - x, y }));
      const mirrored = solvedOf(turned, 4, "right").wall;
      const area = (each: SolvedWall): number =>
        piecesOf(each).reduce((sum, piece) => sum + Number(areaOf(piece)) / 2, 0);
      assert.equal(boxesOf(mirrored).length, boxesOf(wall).length, text);
      // A few nanometres all round each of them.
      const bound = 8 * boxesOf(wall).length * (150 + 75) * MM;
      assert.ok(Math.abs(area(mirrored) - area(wall)) <= bound, text);
    }
  });

  it("are the same in another unit", () => {
    for (const { corners, wall, text } of [...walls("slope", 4), ...walls("risers", 4)]) {
      const other = solvedOf(corners, 4, "left", 10);
      assert.deepEqual(boxesOf(other.wall), boxesOf(wall), text);
    }
  });
});

/** The squares of the distances of a ring's corners from an edge that they lie beside; in nm², rounded down. */
function squaresTo(ring: Ring, a: Corner, b: Corner): bigint[] {
  const [dx, dy] = [BigInt((b.x - a.x) * MM), BigInt((b.y - a.y) * MM)];
  return ring.flatMap((x, i) => {
    if (i % 2 === 1) return [];
    const [px, py] = [BigInt(x - a.x * MM), BigInt(ring[i + 1]! - a.y * MM)];
    const along = px * dx + py * dy;
    const square = dx * dx + dy * dy;
    if (along < 0n || along > square) return [];
    const cross = dx * py - dy * px;
    return [(cross * cross) / square];
  });
}

function* walls(kind: OutlineKind, joint: number) {
  for (let seed = 0; seed < WALLS; seed++) {
    const corners = randomOutline(randomFrom(seed), kind);
    const { text, wall } = solvedOf(corners, joint);
    yield { corners, wall, text, told: `${seed}\n${text}` };
  }
}

function solvedOf(corners: readonly Corner[], joint: number, from = "left", per = 1) {
  const at = (value: number) => String(value / per);
  const outline = corners.map(({ x, y }) => `${at(x)}, ${at(y)}`).join(" to ");
  const sides = ["left", "right", "bottom", "top"].map(
    (side) => `${side} wall movement ${at(joint)}`,
  );
  const text = `units ${per === 1 ? "mm" : "cm"}
tile t {\nface ${at(150)} x ${at(75)}\nthickness ${at(8)}\n}
wall w {\noutline ${outline}\n${sides.join("\n")}
lay t {\nbond stack\njoint ${at(2)}\nacross full tile from ${from}\nup full course from bottom\n}\n}\n`;
  const { plan, diagnostics } = resolve(parse(text), ALONE);
  assert.deepEqual(
    diagnostics.map(({ message }) => message),
    [],
    text,
  );
  return { text, wall: solve(plan).walls[0]! };
}

/** The outline less a box of the joint's width round each of its edges. */
function ringsIn(corners: readonly Corner[], joint: number): Ring[] {
  const ring = corners.flatMap(({ x, y }) => [x * MM, y * MM]);
  const edges = corners.map((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const [l, r] = [Math.min(a.x, b.x) - joint, Math.max(a.x, b.x) + joint];
    const [d, u] = [Math.min(a.y, b.y) - joint, Math.max(a.y, b.y) + joint];
    return [l, d, r, d, r, u, l, u].map((each) => each * MM);
  });
  return subtract([ring], edges).flatMap(ringsOf);
}

function piecesOf({ lays }: SolvedWall): Ring[][] {
  const { pieces } = lays[0]!;
  return Array.from({ length: pieces.count }, (_, i) => ringsOf(pieceShape(pieces, i)));
}

function boxesOf({ lays }: SolvedWall): number[][] {
  const { pieces } = lays[0]!;
  return Array.from({ length: pieces.count }, (_, i) => [...pieces.bounds.slice(4 * i, 4 * i + 4)]);
}

function sorted(boxes: number[][]): string[] {
  return boxes.map((box) => box.join(" ")).sort();
}

function areaOf(rings: readonly Ring[]): bigint {
  return intersect(rings, rings).reduce((sum, each) => sum + doubleShapeArea(each), 0n);
}
