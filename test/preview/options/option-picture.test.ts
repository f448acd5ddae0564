import assert from "node:assert/strict";
import type { Page } from "playwright-core";
import type { WallScene } from "../../../src/drawing/index.js";
import { needsBrowser, openModule } from "../support/open-preview.js";
import { twoWalls } from "../support/show-plan.js";

describe("a layout's small walls", function () {
  needsBrowser(this);
  let page: Page;
  const { walls } = twoWalls(1).scene;

  before(async () => {
    page = await openModule("src/preview/options/option-picture.ts");
    await page.evaluate(
      `document.body.append(subject.optionPicture(${JSON.stringify(walls)}, []))`,
    );
  });

  after(() => page.context().close());

  const count = (wall: WallScene, ...kinds: string[]): number =>
    wall.pieces
      .filter(({ kind }) => kinds.includes(kind))
      .reduce((sum, { boxes, shapes }) => sum + boxes.length / 4 + shapes.length, 0);

  it("tell whole tiles, cut ones and slivers apart", async () => {
    for (const [i, wall] of walls.entries()) {
      const drawn = async (name: string): Promise<number> => {
        const path = page.locator("svg").nth(i).locator(`.option-${name}`);
        if ((await path.count()) === 0) return 0;
        return (await path.first().getAttribute("d"))!.match(/M/g)!.length;
      };
      assert.equal(await drawn("whole"), count(wall, "whole"));
      assert.ok((await drawn("cut")) >= count(wall, "cut", "notch", "scribe", "hole"));
      assert.equal(await drawn("sliver"), count(wall, "sliver"));
    }
  });

  it("are of one scale: a wall of 60 in is 60/36 as wide as one of 36", async () => {
    const sizes = await page
      .locator("svg")
      .evaluateAll((all) =>
        all.map((svg) => [
          Number.parseFloat(svg.getAttribute("width")!),
          Number.parseFloat(svg.getAttribute("height")!),
        ]),
      );
    assert.ok(Math.abs(sizes[0]![0]! / sizes[1]![0]! - 60 / 36) < 1e-3);
    assert.equal(sizes[0]![1], sizes[1]![1]);
    assert.equal(sizes[0]![0], 8, "the widest has the room of one of several");
  });

  it("have a veil over the tile of lays that aren't spoken of", async () => {
    const [wall] = walls;
    const beside = wall!.pieces.slice(0, 1);
    const picture = `subject.optionPicture([${JSON.stringify(wall)}], ${JSON.stringify(beside)})`;
    const veiled = await page.evaluate<string | null>(
      `${picture}.querySelector(".option-beside")?.getAttribute("d") ?? null`,
    );
    assert.equal(veiled!.match(/M/g)!.length, count({ ...wall!, pieces: beside }, beside[0]!.kind));
    assert.equal(await page.locator(".option-beside").count(), 0, "none without such lays");
  });
});
