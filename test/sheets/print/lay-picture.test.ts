import assert from "node:assert/strict";
import type { Scene } from "../../../src/drawing/index.js";
import { layPicture } from "../../../src/sheets/print/lay-picture.js";
import { exampleScene, faultsOf, newFlow, wordsOf } from "./kit.js";

describe("a picture", () => {
  const scene = exampleScene("back-wall.tileplan");

  it("is as large as the sheet lets it be, in its own proportions", () => {
    const flow = newFlow();
    layPicture(flow, scene, "Back wall");
    const [sheet] = flow.finish();
    const picture = sheet!.marks.find((mark) => mark.kind === "picture")!;
    assert.deepEqual(faultsOf(sheet!), []);
    const { left, right, top, bottom } = scene.view;
    const filled = Math.max(
      ((right - left) * picture.scale) / flow.width,
      ((bottom - top) * picture.scale) / flow.fullRoom,
    );
    assert.ok(filled > 0.93);
    assert.ok(wordsOf(sheet!).includes("Back wall"));
  });

  it("has letters that can be read at arm's length: 7 points or more", () => {
    for (const [name, walls] of [
      ["three-walls", 3],
      ["back-wall", 1],
      ["niche-wall", 1],
    ] as const) {
      for (let wall = 0; wall < walls; wall++) {
        const each = exampleScene(`${name}.tileplan`, wall);
        const flow = newFlow();
        layPicture(flow, each, "");
        const picture = flow.finish()[0]!.marks.find((mark) => mark.kind === "picture")!;
        const smallest = Math.min(
          ...[...each.labels, ...each.walls.flatMap(({ labels }) => labels)].map(
            ({ size }) => size,
          ),
        );
        assert.ok(smallest * picture.scale >= 6, `${name} ${wall}: ${smallest * picture.scale}`);
        assert.ok(each.em * picture.scale >= 7, `${name} ${wall}: ${each.em * picture.scale}`);
      }
    }
  });

  it("goes to the next sheet where this one has too little room", () => {
    const flow = newFlow();
    flow.line("before", flow.left, flow.take(300), 10);
    layPicture(flow, scene, "");
    const [one, two] = flow.finish();
    assert.ok(!one!.marks.some((mark) => mark.kind === "picture"));
    assert.ok(two!.marks.some((mark) => mark.kind === "picture"));
  });

  it("has a sheet on its side where its letters would be too small on an upright one", () => {
    const wide: Scene = { ...scene, view: { left: 0, top: 0, right: 9000, bottom: 2500 }, em: 100 };
    const flow = newFlow();
    flow.line("before", flow.left, flow.take(20), 10);
    layPicture(flow, wide, "Long wall");
    flow.line("after", flow.left, flow.take(20), 10);
    const sheets = flow.finish();
    assert.deepEqual(
      sheets.map(({ width, height }) => width > height),
      [false, true, false],
    );
    for (const sheet of sheets) assert.deepEqual(faultsOf(sheet), []);
  });

  it("tells the letters of its labels that can't be printed", () => {
    const label = { ...scene.labels[0]!, text: "日" };
    const flow = newFlow();
    layPicture(flow, { ...scene, labels: [label] }, "");
    assert.deepEqual([...flow.missing], ["日"]);
  });
});
