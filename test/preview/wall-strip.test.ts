import assert from "node:assert/strict";
import { countWords } from "../../src/preview/wall-strip.js";
import { roomOf } from "../../src/preview/box-to-fit.js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { paint, seenBox, showPlan, twoWalls } from "./support/show-plan.js";

describe("the strip of walls", function () {
  needsBrowser(this);
  const picture = twoWalls(1);
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan(
      {},
      {
        ...picture,
        walls: [
          { ...picture.walls[0]!, counts: { error: 2, warning: 1, information: 0 } },
          { ...picture.walls[1]!, counts: { error: 0, warning: 0, information: 0 } },
        ],
      },
    );
  });

  after(() => preview.close());

  it("shows each wall's title and its counts of findings, to the eye and to the ear", async () => {
    const { page } = preview;
    const back = page.getByRole("button", { name: "Back wall : 2 errors, 1 warning" });
    assert.deepEqual(await back.locator(".count").allInnerTexts(), ["2", "1"]);
    assert.equal(await back.locator("svg").count(), 1);
    assert.equal(await page.getByRole("button", { name: "Side wall : no findings" }).count(), 1);
  });

  it("goes to a wall and back to all", async () => {
    const { page } = preview;
    const all = await seenBox(preview);
    await page.locator('.walls [data-wall="side"]').click();
    const [left, top, width, height] = await seenBox(preview);
    const room = roomOf(picture.scene.walls[1]!, []);
    assert.ok(left! <= room.left && left! + width! >= room.right);
    assert.ok(top! <= room.top && top! + height! >= room.bottom);
    assert.ok(width! < all[2]!);
    const chosen = page.locator('.walls [aria-current="true"]');
    assert.match(await chosen.innerText(), /Side wall/);
    await page.getByRole("button", { name: "All walls" }).click();
    assert.deepEqual(await seenBox(preview), all);
  });

  it("is one stop for Tab; arrows, Home and End go along it", async () => {
    const { page } = preview;
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await page.getByRole("button", { name: "All walls" }).focus();
    assert.equal(await page.locator('.walls button[tabindex="0"]').count(), 1);
    await page.keyboard.press("ArrowRight");
    assert.match((await focused())!, /Back wall/);
    await page.keyboard.press("End");
    assert.match((await focused())!, /Side wall/);
    await page.keyboard.press("ArrowRight");
    assert.match((await focused())!, /Side wall/);
    await page.keyboard.press("Home");
    assert.equal(await focused(), "All walls");
    await page.keyboard.press("Tab");
    assert.equal(await page.evaluate(() => document.activeElement?.className), "stage");
  });

  it("keeps the keyboard's place when its pictures change", async () => {
    const { page } = preview;
    await page.locator('.walls [data-wall="side"]').focus();
    await paint(preview, {
      ...twoWalls(2),
      walls: picture.walls.map((w) => ({ ...w, title: "New" })),
    });
    assert.equal(
      await page.evaluate(() => (document.activeElement as HTMLElement).dataset.wall),
      "side",
    );
  });

  it("is left out where there is one wall", async () => {
    const scene = { ...picture.scene, walls: picture.scene.walls.slice(0, 1) };
    await paint(preview, { ...picture, version: 3, scene, walls: picture.walls.slice(0, 1) });
    assert.equal(await preview.page.locator(".walls").isVisible(), false);
  });
});

describe("a count in words", () => {
  it("has its number right", () => {
    assert.equal(countWords("error", 1), "1 error");
    assert.equal(countWords("information", 2), "2 notes");
  });
});
