import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import type { Wanted } from "../../../src/model/index.js";
import { roomJson, wishJson } from "../../../src/sheets/options/room-json.js";
import { solve } from "../../../src/solver/index.js";
import { askedOf, roomWall, SASH } from "../../solver/room/small-room.js";

const WALL = roomWall("back", SASH, "across full tile from left");

describe("a room's layouts as data", () => {
  it("are none for a plan whose walls are chosen one by one", () => {
    assert.equal(roomJson(solve(askedOf(WALL))), null);
  });

  it("have the wishes of each layout, in millimetres", () => {
    const wishes = "whole courses at bottom\n whole courses at sill of sash";
    const solved = solve(askedOf(`prefer {\n ${wishes}\n}\n${WALL}`));
    const { options, wishes: told } = roomJson(solved) as {
      options: { had: boolean; wishes: { missed: number }[]; cutPieces: number }[];
      wishes: { wish: string; met: boolean; missed: number; unit: string }[];
    };
    assert.deepEqual(
      options[0]!.wishes.map(({ missed }) => missed),
      [0, 25.4],
    );
    assert.equal(options[0]!.had, true);
    assert.deepEqual(
      told.map(({ wish, met, missed, unit }) => [wish, met, missed, unit]),
      [
        ["whole courses at bottom", true, 0, "mm"],
        ["whole courses at sill of sash", false, 25.4, "mm"],
      ],
    );
  });

  it("count cuts where a wish is about their number", () => {
    const { origin } = askedOf(WALL).walls[0]!;
    const of = (wanted: Wanted) => wishJson({ wanted, wall: null, origin }, 3, "inch");
    assert.deepEqual(of({ kind: "no-cut", under: 2 * NM_PER.inch }), {
      wish: "no cut under 2",
      wall: null,
      met: false,
      missed: 3,
      unit: "cuts",
    });
  });
});
