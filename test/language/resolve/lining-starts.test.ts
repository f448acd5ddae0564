import assert from "node:assert/strict";
import { parse, resolve } from "../../../src/language/index.js";
import type { InsideFace } from "../../../src/model/index.js";
import { ALONE } from "../../support/solve-text.js";

function read(lines: string) {
  const text = `units mm
tile field {
 face 200 x 100
 thickness 8
}
wall back {
 size 1200 x 1000
 niche shelf {
 at 400, 300
 size 400 x 300
 depth 90
 ${lines}
 }
 window sash {
 at 100, 800
 size 100 x 100
 }
 lay field {
 bond stack
 joint 2
 }
}
`;
  const { plan, diagnostics } = resolve(parse(text), ALONE);
  const lays = plan.walls[0]!.openings[0]!.inside!.lays;
  const start = (face: InsideFace) =>
    lays[face] && { across: lays[face].across, up: lays[face].up };
  const told = diagnostics.map(
    ({ range: { start: from, end }, message }) =>
      `[${text.split("\n")[from.line]!.slice(from.character, end.character)}] ${message}`,
  );
  return { lays, start, told };
}

describe("where a lining starts", () => {
  it("is left open where the plan doesn't say", () => {
    assert.deepEqual(read("back field").start("back"), { across: null, up: null });
  });

  it("is stated of the back, the sill and the head as of a wall: x runs as the wall's", () => {
    const { start, told } = read(
      "back field joint 3 across tile centred on shelf up full course from top\n" +
        "sill field across joint centred on wall\nhead field stack across tile centred at 500 + 7",
    );
    assert.deepEqual(told, []);
    assert.deepEqual(start("back"), {
      across: { kind: "tile", centre: { on: "surface" } },
      up: { kind: "full-course", from: "top" },
    });
    assert.deepEqual(start("sill")!.across, { kind: "joint", centre: { on: "wall" } });
    assert.deepEqual(start("head")!.across, {
      kind: "tile",
      centre: { on: "place", x: 507_000_000 },
    });
  });

  it("is stated of the sides from the front or the back, which each has at its own end", () => {
    const { start } = read("sides field across full tile from back up joint at 352");
    assert.deepEqual(start("left"), {
      across: { kind: "full-tile", from: "right" },
      up: { kind: "joint", y: 352_000_000 },
    });
    assert.deepEqual(start("right")!.across, { kind: "full-tile", from: "left" });
    const front = read("sides field across full tile from front");
    assert.deepEqual(front.start("left")!.across, { kind: "full-tile", from: "left" });
  });

  it("is stated of the sill and the head up from the front or the back", () => {
    const { start } = read(
      "sill field up full course from back\nhead field up full course from back",
    );
    assert.deepEqual(start("sill")!.up, { kind: "full-course", from: "top" });
    assert.deepEqual(start("head")!.up, { kind: "full-course", from: "bottom" });
  });

  it("is stated of all surfaces in their middles alone", () => {
    const { start, told } = read("inside field across joint centred on shelf");
    assert.deepEqual(told, []);
    for (const face of ["back", "left", "head"] as const) {
      assert.deepEqual(start(face)!.across, { kind: "joint", centre: { on: "surface" } });
    }
  });

  const faults: Record<string, string> = {
    "sides field across full tile from left":
      "[across full tile from left] found a full tile from the left of the sides, wanted `full tile from front` or `from back`, or `centred on shelf`, since they run into the wall",
    "sides field across tile centred on wall":
      "[across tile centred on wall] found a start centred on the wall of the sides, wanted `full tile from front` or `from back`, or `centred on shelf`, since they run into the wall",
    "back field across full tile from front":
      "[across full tile from front] found a full tile from the front of the back, wanted `full tile from left` or `from right`, or one centred on `shelf`, on `wall` or at a place",
    "back field across tile centred on sash":
      "[across tile centred on sash] found a start centred on `sash` of the back, wanted `full tile from left` or `from right`, or one centred on `shelf`, on `wall` or at a place",
    "inside field across tile centred at 600":
      "[across tile centred at 600] found a start centred at a place of the wall of all surfaces, wanted `centred on shelf`, or it of one surface, such as `back`",
    "sill field up full course from bottom":
      "[up full course from bottom] found a full course from the bottom of the sill, wanted `full course from front` or `from back`, since it runs into the wall",
    "head field up joint at 40":
      "[up joint at 40] found a joint at a height of the head, wanted `full course from front` or `from back`, since it runs into the wall",
    "sides field up full course from front":
      "[up full course from front] found a full course from the front of the sides, wanted `full course from bottom` or `from top`, or `joint at` a height",
    "inside field up full course from bottom":
      "[up full course from bottom] found a full course from the bottom of all surfaces, wanted it of one surface, such as `back`",
  };
  for (const [lines, message] of Object.entries(faults)) {
    it(`is told where it makes no sense, and left out: ${lines}`, () => {
      const { lays, told } = read(lines);
      assert.deepEqual(told, [message]);
      for (const lay of Object.values(lays)) {
        assert.deepEqual([lay.tile.name, lay.across, lay.up], ["field", null, null]);
      }
    });
  }

  it("that can't be read costs its line alone", () => {
    const { told, lays } = read("back field across tile from left\nsill field");
    assert.equal(told.length, 1);
    assert.deepEqual(Object.keys(lays), ["sill"]);
  });
});
