import assert from "node:assert/strict";
import type { ComparisonWay } from "../../../src/service/index.js";
import { needsBrowser, type OpenPreview } from "../support/open-preview.js";
import {
  comparisonOf,
  MOVED,
  paintComparison,
  showComparison,
} from "../support/show-comparison.js";
import { TWO_WALLS } from "../support/show-plan.js";

const picture = (way: ComparisonWay, version = 1, after = MOVED) =>
  comparisonOf({ way, wall: null }, TWO_WALLS, after, version);

describe("the board", function () {
  needsBrowser(this);
  let page: OpenPreview;

  beforeEach(async () => {
    page = await showComparison({}, picture("sides"));
  });

  afterEach(async () => {
    assert.deepEqual(page.complaints, []);
    await page.close();
  });

  const walls = () =>
    page.page
      .locator(".board [data-wall]")
      .evaluateAll((all) => all.map((wall) => (wall as HTMLElement).dataset.wall));

  it("draws both states beside one another, over one another, or on one another", async () => {
    assert.deepEqual(await walls(), ["back-before", "back-after"]);
    await paintComparison(page, picture("overlay", 2));
    assert.deepEqual(await walls(), ["back"]);
    assert.ok((await page.page.locator("#gl-back-recut").count()) > 0);
    await paintComparison(page, picture("slider", 3));
    assert.deepEqual(await walls(), ["back", "back"]);
    await paintComparison(page, picture("sides", 4));
    assert.deepEqual(await walls(), ["back-before", "back-after"]);
  });

  it("lays both states on the same place of the wall", async () => {
    await paintComparison(page, picture("slider", 2));
    const corner = (layer: string) =>
      page.page
        .locator(`.${layer} svg [data-wall] [data-kind="whole"]`)
        .first()
        .evaluate((piece) => {
          const wall = piece.closest<SVGGElement>("[data-wall]")!;
          const { e, f } = wall.getScreenCTM()!;
          return [e, f].map(Math.round);
        });
    assert.deepEqual(await corner("before"), await corner("after"));
  });

  it("shows a new wall alone", async () => {
    const alone = TWO_WALLS.slice(TWO_WALLS.indexOf("wall side"))
      .replace("wall side", "wall end")
      .replace("right corner back over", "right wall");
    const more = `${TWO_WALLS}${alone}`;
    await paintComparison(page, picture("slider", 2, more));
    assert.equal(await page.page.locator(".before svg").count(), 0);
    assert.equal(await page.page.locator(".after svg").count(), 1);
  });

  it("keeps its zoom over an update of the same wall", async () => {
    await page.page.getByRole("button", { name: "Zoom in" }).click();
    const view = () => page.page.locator(".after svg").getAttribute("viewBox");
    const before = await view();
    await paintComparison(page, picture("sides", 2, MOVED.replace("at 20, 24", "at 21, 24")));
    assert.equal(await view(), before);
  });

  it("moves by keys, and by the mouse", async () => {
    const view = async () =>
      (await page.page.locator(".after svg").getAttribute("viewBox"))!.split(" ").map(Number);
    const [left, , width] = await view();
    await page.page.locator(".board").focus();
    await page.page.keyboard.press("+");
    await page.page.keyboard.press("ArrowRight");
    const [moved, , narrower] = await view();
    assert.ok(moved! > left! && narrower! < width!);
    await page.page.keyboard.press("0");
    assert.deepEqual((await view())[2], width);
  });
});
