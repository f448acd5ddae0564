import assert from "node:assert/strict";
import { cutsJson, cutTileJson, trimCutJson } from "../../../src/sheets/sheet-json/cuts-json.js";
import type { Box } from "../../../src/solver/index.js";
import { inches, wallText } from "../setting-out/plans.js";
import { benchGround } from "../paper/sheet-bench.js";

const BOX: Box = { left: 0, bottom: inches(1), right: inches(2), top: inches(4) };

describe("cuts as JSON", () => {
  const ground = benchGround(wallText());
  const [wall] = ground.takeoff.walls;
  const json = cutsJson(wall!) as { batches: Record<string, unknown>[]; pieces: object[] };

  it("are batches with their fences in millimetres and their labels", () => {
    assert.equal(json.batches.length, wall!.batches.length);
    assert.deepEqual(json.batches[1], {
      ...{ tile: "field", kind: "crosscut", box: [0, 0, 66.675, 101.6] },
      fences: [{ along: "across", from: "left", keep: 66.675 }],
      ...{ tapers: [], notches: [], holes: [], mitres: [], keeps: ["left", "bottom", "top"] },
      labels: ["B-01-10", "B-02-10", "B-03-10", "B-04-10", "B-05-10"],
      beyondSaw: [],
    });
  });

  it("name the piece behind each label", () => {
    const factory = wall!.pieces.find(({ label }) => label === "B-01-10")!.factory;
    assert.deepEqual(json.pieces[0], { label: "B-01-10", piece: "back/1/10", factory });
    assert.equal(json.pieces.length, wall!.pieces.length);
  });

  it("tell tapers, notches, holes and mitres by their figures", () => {
    const [batch] = wall!.batches;
    const cut = {
      ...batch!.cut,
      tapers: [{ side: "bottom", from: 0, to: inches(4), first: inches(2), last: inches(3) }],
      notches: [{ opens: ["top"], box: BOX }],
      holes: [
        {
          ...{ name: "valve", fromLeft: inches(1), fromBottom: inches(-1), across: inches(2) },
          plate: { kind: "round", across: inches(3) },
        },
      ],
      mitres: [{ side: "right", length: inches(4) }],
    } as const;
    const told = cutsJson({ ...wall!, batches: [{ ...batch!, cut }] }) as typeof json;
    assert.deepEqual(told.batches[0]!.tapers, [
      { side: "bottom", from: 0, to: 101.6, first: 50.8, last: 76.2 },
    ]);
    assert.deepEqual(told.batches[0]!.notches, [{ opens: ["top"], box: [0, 25.4, 50.8, 101.6] }]);
    assert.deepEqual(told.batches[0]!.holes, [
      {
        ...{ name: "valve", fromLeft: 25.4, fromBottom: -25.4, across: 50.8 },
        plate: { across: 76.2 },
      },
    ]);
    assert.deepEqual(told.batches[0]!.mitres, [{ side: "right", length: 101.6 }]);
  });

  it("tell what a tile and a trim are cut up into", () => {
    const piece = { label: "B-01-01", box: BOX, turns: 2 } as const;
    assert.deepEqual(cutTileJson({ pieces: [piece], offcuts: [BOX] }), {
      pieces: [{ label: "B-01-01", box: [0, 25.4, 50.8, 101.6], turns: 2 }],
      offcuts: [[0, 25.4, 50.8, 101.6]],
    });
    const where = [{ wall: "back", along: "sash bottom" }];
    const cut = { length: inches(2), count: 1, mitred: ["left"], whole: false, where } as const;
    assert.deepEqual(trimCutJson(cut), { ...cut, length: 50.8 });
  });
});
