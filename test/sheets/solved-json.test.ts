import assert from "node:assert/strict";
import type { Diagnostic } from "../../src/model/index.js";
import { solvedJson } from "../../src/sheets/solved-json.js";
import { doublePieceArea, pieceId } from "../../src/solver/index.js";
import { firstWall, solveClean } from "../support/solve-text.js";
import { WALL } from "./wall.js";

interface PieceJson {
  id: string;
  course: number;
  column: number;
  cut: string;
  outline: [number, number][];
  holes: [number, number][][];
  area: number;
  hidden: number;
  set?: true;
}

interface PlanJson {
  schema: number;
  plan: string;
  units: string;
  walls: {
    name: string;
    size: [number, number];
    refused: unknown;
    holes?: object[];
    lays: {
      tile: string;
      bond: string;
      joint: number;
      across: object;
      up: object;
      choice: { left: string[]; chosen: { score: object }; others: unknown[] } | null;
      courses: { number: number; bottom: number; top: number }[];
      pieces: PieceJson[];
    }[];
    trims: { opening?: string; edge?: string; side: string; pieces: object[] }[];
  }[];
  diagnostics: object[];
}

function json(text: string, diagnostics: readonly Diagnostic[] = []): PlanJson {
  const { solved } = solveClean(text);
  const parts = solvedJson(solved, diagnostics, (file) => file);
  return JSON.parse([...parts].join("")) as PlanJson;
}

/** Square millimetres inside a ring, by the shoelace sum. */
function ringArea(ring: readonly [number, number][]): number {
  return ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

describe("solvedJson", () => {
  const plan = json(WALL);
  const lay = plan.walls[0]!.lays[0]!;

  it("has the plan's keys, lengths in millimetres", () => {
    assert.deepEqual(Object.keys(plan), ["schema", "plan", "units", "walls", "diagnostics"]);
    assert.deepEqual([plan.schema, plan.plan, plan.units], [1, "Sheet bench", "inch"]);
    const [back] = plan.walls;
    assert.deepEqual([back!.name, back!.size, back!.refused], ["back", [1016, 609.6], null]);
    assert.deepEqual([lay.tile, lay.bond, lay.joint], ["field", "running 1/2", 3.175]);
    assert.deepEqual(lay.across, { mode: "tile", at: 508 });
  });

  it("marks the pieces that are set, and no others", () => {
    const set = WALL.replace(
      "up full course from bottom",
      "up full course from bottom\n    set courses 2 to 3",
    );
    const side = json(set).walls[1]!;
    const pieces = side.lays.flatMap((each) => each.pieces);
    const marked = pieces.filter((piece) => piece.set === true);
    assert.ok(marked.length > 0 && marked.length < pieces.length);
    assert.deepEqual(
      marked,
      pieces.filter(({ course }) => course === 2 || course === 3),
    );
    assert.ok(lay.pieces.every((piece) => !("set" in piece)));
  });

  it("has every course and piece of the solved plan", () => {
    const { laid } = firstWall(solveClean(WALL));
    assert.equal(lay.courses.length, laid.courses.length);
    assert.equal(lay.pieces.length, laid.pieces.count);
    for (const [i, piece] of lay.pieces.entries()) {
      assert.equal(piece.id, pieceId(laid, i));
      const area = Number(doublePieceArea(laid.pieces, i)) / 2e12;
      assert.ok(Math.abs(piece.area - area) <= area * 1e-15);
    }
  });

  it("gives outlines that close round their areas, anticlockwise from the lowest, leftmost corner", () => {
    for (const { id, outline, holes, area } of lay.pieces) {
      const inside = [outline, ...holes].reduce((sum, ring) => sum + ringArea(ring), 0);
      assert.ok(Math.abs(inside - area) < 1e-6, `${id}: ${inside} and ${area}`);
      const lowest = [...outline].sort((a, b) => a[1] - b[1] || a[0] - b[0])[0];
      assert.deepEqual(outline[0], lowest, id);
    }
  });

  it("tells how much of a piece another wall's tile hides", () => {
    // The side wall's tile and bed hide 1/2 in, less the back wall's own soft joint of 1/8 in.
    const [first] = lay.pieces.filter((piece) => piece.course === 2 && piece.column === 1);
    const height = first!.area / (first!.outline[1]![0] - first!.outline[0]![0]);
    assert.ok(Math.abs(first!.hidden - height * 0.375 * 25.4) < 1e-9);
    assert.equal(lay.pieces.find((piece) => piece.cut === "none")!.hidden, 0);
  });

  it("tells what was chosen with its numbers, and null where the plan says it all", () => {
    assert.deepEqual(lay.choice!.left, ["up"]);
    assert.deepEqual(Object.keys(lay.choice!.chosen.score), [
      ...["slivers", "underHalf", "imbalance", "cuts", "tiles", "jointOver"],
    ]);
    assert.equal(plan.walls[1]!.lays[0]!.choice, null);
  });

  it("tells trims by their opening and side", () => {
    const sides = plan.walls[0]!.trims.map(({ opening, side }) => `${opening} ${side}`).sort();
    assert.deepEqual(sides, ["sash bottom", "sash left", "sash right", "sash top"]);
    const free = WALL.replace("right wall movement 1/8", "right free trim nose");
    const edges = json(free).walls[0]!.trims.map(({ edge }) => edge);
    assert.ok(edges.includes("right"));
  });

  it("has a wall's holes as they are cut, with the plates that cover them", () => {
    const lines = "hole valve at 10, 20 across 3 plate 5\n  hole arm at 30, 20 across 1";
    const [back, side] = json(WALL.replace("window sash", `${lines}\n  window sash`)).walls;
    assert.deepEqual(back!.holes, [
      { name: "valve", at: [254, 508], across: 76.2, plate: { across: 127 } },
      { name: "arm", at: [762, 508], across: 25.4 },
    ]);
    assert.equal(side!.holes, undefined);
  });

  it("has the findings", () => {
    const place = { line: 3, character: 0 };
    const found: Diagnostic = {
      code: "cut/sliver",
      severity: "error",
      message: `a "quoted" name`,
      file: "a.tileplan",
      range: { start: place, end: place },
      wall: "back",
    };
    assert.deepEqual(json(WALL, [found]).diagnostics, [found]);
  });

  it("writes a piece a line", () => {
    const { solved } = solveClean(WALL);
    const lines = [...solvedJson(solved, [], (file) => file)].join("").split("\n");
    const pieces = lines.filter((line) => line.startsWith(`{"id":"back/`));
    assert.equal(pieces.length, lay.pieces.length);
  });
});
