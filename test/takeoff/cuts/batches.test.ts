import assert from "node:assert/strict";
import { batchesOf } from "../../../src/takeoff/cuts/batches.js";
import { cutWall, mm } from "../../support/cut-wall.js";

describe("the batches of a wall", () => {
  const { plan, taken } = cutWall({
    size: "254 x 234",
    bond: "running 1/2",
    wall: [
      "bottom pan measured 0: 0, 250: 5 movement 0",
      "window sash {\nat 60, 80\nsize 20 x 60\nmovement 0\n}",
      "hole arm at 230, 130 across 20",
    ],
  });
  const { pieces } = taken.walls[0]!;
  const batches = batchesOf(plan, pieces);

  it("hold every cut piece once", () => {
    const labels = batches.flatMap((batch) => batch.labels);
    assert.deepEqual(labels.sort(), pieces.map(({ label }) => label).sort());
  });

  it("come in the order of work: straight cuts, tapers, notches, holes, mitres", () => {
    const order = ["rip", "crosscut", "corner", "taper", "notch", "hole", "mitre"];
    const kinds = batches.map(({ cut }) => order.indexOf(cut.kind));
    assert.deepEqual(
      kinds,
      [...kinds].sort((a, b) => a - b),
    );
    assert.ok(new Set(kinds).size >= 5, kinds.join());
  });

  it("have the widest setting of the fence first, within a kind", () => {
    const { taken: bonded } = cutWall({ size: "254 x 206", bond: "running 1/3" });
    const keeps = bonded.walls[0]!.batches.filter(({ cut }) => cut.kind === "crosscut").map(
      ({ cut }) => cut.fences[0]!.keep,
    );
    assert.deepEqual(
      keeps,
      [...keeps].sort((a, b) => b - a),
    );
    assert.ok(new Set(keeps).size > 2, keeps.join());
  });

  it("are of pieces with the same cuts and the same own edges, in the order of the wall", () => {
    const plain = cutWall({ size: "254 x 206" });
    assert.deepEqual(
      plain.taken.walls[0]!.batches.map(({ cut, keeps, labels }) => [cut.kind, keeps, labels]),
      [["crosscut", ["left", "bottom", "top"], ["B-01-03", "B-02-03", "B-03-03", "B-04-03"]]],
    );
  });

  it("tell left ends from right ends, which are turned round on the saw", () => {
    const centred = cutWall({ size: "200 x 50", across: "tile centred on wall" });
    const { batches: ends } = centred.taken.walls[0]!;
    assert.deepEqual(
      ends.map(({ cut, labels }) => [cut.fences, labels]),
      [
        [[{ along: "across", from: "right", keep: mm(48) }], ["B-01-01"]],
        [[{ along: "across", from: "left", keep: mm(48) }], ["B-01-03"]],
      ],
    );
  });
});
