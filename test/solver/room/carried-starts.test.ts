import assert from "node:assert/strict";
import { NM_PER } from "../../../src/measure/index.js";
import { carriedStarts } from "../../../src/solver/room/carried-starts.js";
import { bondedRoom, endsOf } from "./bonded-room.js";

/** Where course 1's first tile ends by each way, in inches from the corner's joint: the second wall going on from the first. */
function widths(bond: string): Map<string, number> {
  const solved = bondedRoom({
    one: "tile centred on wall",
    two: "full tile from left",
    bond,
    wishes: [],
  });
  const [over, under] = endsOf(solved);
  const lay = solved.walls[1]!.lays[0]!.lay;
  const { plan } = solved;
  const carried = carriedStarts(plan, over, lay, under, true, true);
  return new Map(
    carried.map(({ x, said }) => {
      const words = !said ? "offcut" : said.kind === "mirrored" ? "mirrored" : said.joint;
      return [words, (x - over.laid.region.bounds.left) / NM_PER.inch + 6];
    }),
  );
}

describe("starts that go on from another wall", () => {
  it("are wrapped with the joint added or swallowed, mirrored, or with the offcut of what is cut", () => {
    // The first wall shows 2 9/16 at its right, and 1/8 more is hidden behind the second's tile.
    assert.deepEqual(
      [...widths("stack")],
      [
        ["added", 3 + 7 / 16],
        ["swallowed", 3 + 5 / 16],
        ["mirrored", 2 + 9 / 16],
        ["offcut", 3 + 7 / 16 - 1 / 8],
      ],
    );
  });

  it("go on from the wall over to the wall under as well", () => {
    const solved = bondedRoom({
      one: "full tile from right",
      two: "tile centred on wall",
      wishes: [],
    });
    const [over, under] = endsOf(solved);
    const lay = solved.walls[0]!.lays[0]!.lay;
    for (const { x, said } of carriedStarts(solved.plan, under, lay, over, false, true)) {
      if (!said) continue;
      const words =
        said.kind === "mirrored" ? "mirrored from two" : `wrapped from two ${said.joint}`;
      const stated = bondedRoom({ one: words, two: "tile centred on wall", wishes: [] });
      const module = Math.round(6.0625 * NM_PER.inch);
      assert.equal((stated.walls[0]!.lays[0]!.lattice.x - x) % module, 0, words);
    }
  });

  it("can't be said where two walls meet at both their ends", () => {
    const solved = bondedRoom({
      one: "tile centred on wall",
      two: "full tile from left",
      wishes: [],
    });
    const [over, under] = endsOf(solved);
    const lay = solved.walls[1]!.lays[0]!.lay;
    const carried = carriedStarts(solved.plan, over, lay, under, true, false);
    assert.ok(carried.every(({ said }) => said === null));
  });
});
