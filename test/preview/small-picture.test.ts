import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import type { WallScene } from "../../src/drawing/index.js";
import { needsBrowser, openModule } from "./support/open-preview.js";
import { twoWalls } from "./support/show-plan.js";

describe("a wall's small picture", function () {
  needsBrowser(this);
  let page: Page;

  before(async () => {
    page = await openModule("src/preview/small-picture.ts");
  });

  after(() => page.context().close());

  function pathOf(wall: WallScene, name: string): Promise<string | null> {
    return page.evaluate<string | null>(
      `subject.smallPicture(${JSON.stringify(wall)}).querySelector(".${name}")?.getAttribute("d") ?? null`,
    );
  }

  it("has the wall's tiles, its openings and what errors speak of", async () => {
    const wall = twoWalls(1).scene.walls[0]!;
    const count = wall.pieces.reduce(
      (n, { boxes, shapes }) => n + boxes.length / 4 + shapes.length,
      0,
    );
    const tiles = (await pathOf(wall, "small-tiles"))!;
    assert.equal(tiles.match(/M/g)!.length, count);
    const { box } = wall.openings[0]!;
    assert.ok((await pathOf(wall, "small-openings"))!.startsWith(`M${box.left} ${box.bottom} `));
    const errors = wall.marks.filter((mark) => mark.severity === "error").length;
    const marked = await pathOf(wall, "small-marks.error");
    assert.equal(marked?.match(/M/g)?.length ?? 0, errors);
  });

  it("has windows, niches, doors and what stands before it in tones of their own", async () => {
    const wall = twoWalls(1).scene.walls[0]!;
    const [sash] = wall.openings;
    const openings = (["window", "niche", "door", "bench"] as const).map((kind, i) => {
      const box = { ...sash!.box, left: i, right: i + 1 };
      return { ...sash!, kind, box };
    });
    const tones = ["window", "niche", "door", "build"];
    for (const [i, tone] of tones.entries())
      assert.match(
        (await pathOf({ ...wall, openings }, `small-openings.${tone}`))!,
        RegExp(`^M${i} `),
      );
  });

  it("has no single tiles where there are too many to be seen", async () => {
    const wall = twoWalls(1).scene.walls[0]!;
    const boxes = Array.from({ length: 1501 }, (_, i) => [i, -1, i + 0.9, 0]).flat();
    const many = { ...wall, pieces: [{ kind: "whole" as const, course: 1, boxes, shapes: [] }] };
    assert.equal(await pathOf(many, "small-tiles"), "");
  });
});
