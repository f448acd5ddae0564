import assert from "node:assert/strict";
import { needsBrowser, openPreview, type OpenPreview } from "./support/open-preview.js";
import {
  lineOf,
  paint,
  pixelOf,
  seenBox,
  showPlan,
  TWO_WALLS,
  twoWalls,
  URI,
} from "./support/show-plan.js";

const PLACE = {
  uri: URI,
  range: { start: { line: 7, character: 2 }, end: { line: 7, character: 9 } },
};

describe("the preview in a page", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  beforeEach(async () => {
    preview = await showPlan({
      reading: ({ wall }) => ({
        title: `A piece of ${wall}`,
        facts: [["visible", "5 7/8 x 2 7/8 in"]],
        outline: [],
        piece: `${wall}/1/1`,
        place: PLACE,
      }),
    });
  });

  afterEach(async () => {
    assert.deepEqual(preview.complaints, [], "nothing fails, nothing is refused by the policy");
    await preview.close();
  });

  it("keeps zoom and place over an update", async () => {
    const { page } = preview;
    const [x, y] = await pixelOf(preview, 800, 600);
    await page.mouse.move(x, y);
    await page.keyboard.down("Control");
    await page.mouse.wheel(0, -400);
    await page.keyboard.up("Control");
    const before = await seenBox(preview);
    await paint(preview, twoWalls(2, TWO_WALLS.replace("sash {", "light {")));
    assert.deepEqual(await seenBox(preview), before);
    assert.equal(
      await page.locator('g[id$="-opening-light"]').count(),
      1,
      "the new picture is drawn",
    );
  });

  it("drops an older version that comes late", async () => {
    await paint(preview, twoWalls(5, TWO_WALLS.replace("sash {", "light {")));
    await preview.post({ type: "picture", picture: twoWalls(3) });
    await preview.page.waitForTimeout(100);
    assert.equal(await preview.page.locator('g[id$="-opening-light"]').count(), 1);
    assert.equal(await preview.page.locator('g[id$="-opening-sash"]').count(), 0);
  });

  it("passes over a picture of another plan and what is no message", async () => {
    const other = { ...twoWalls(9, TWO_WALLS.replace("sash {", "light {")), uri: "file:///other" };
    await preview.post({ type: "picture", picture: other });
    await preview.post({ type: "picture" } as never);
    await preview.post("<b>nonsense</b>" as never);
    await preview.page.waitForTimeout(100);
    assert.equal(await preview.page.locator('g[id$="-opening-sash"]').count(), 1);
  });

  it("keeps the last whole picture under a note while the text is broken", async () => {
    const { page } = preview;
    const broken = { ...twoWalls(2, TWO_WALLS.replace("sash {", "light {")), whole: false };
    await paint(preview, broken);
    assert.match(await page.getByRole("status").innerText(), /last picture before/);
    assert.equal(await page.locator('g[id$="-opening-sash"]').count(), 1);
    await paint(preview, twoWalls(3));
    assert.equal(await page.locator(".note").isHidden(), true);
  });

  it("says that a plan's file is gone, and that a plan is simplified", async () => {
    await paint(preview, { ...twoWalls(2), simplified: true });
    assert.match(await preview.page.getByRole("status").innerText(), /drawn as bands/);
    await preview.post({ type: "gone", uri: URI, message: "The file was deleted." });
    await preview.page.getByText("The file was deleted.").waitFor();
  });

  it("tells a hovered piece and goes to its line at a click", async () => {
    const { page } = preview;
    await page.mouse.move(...(await spotOn("side", 60, -40)));
    await page.getByText("A piece of side").waitFor();
    assert.equal(await page.locator(".mark-hover").getAttribute("d"), await outlineOfFirst("side"));
    await page.mouse.down();
    await page.mouse.up();
    const { uri, range } = await preview.waitFor("select");
    assert.deepEqual({ uri, range }, PLACE);
  });

  it("does not take a drag for a click", async () => {
    const { page } = preview;
    const [x, y] = await spotOn("side", 60, -40);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 40, y + 10, { steps: 4 });
    await page.mouse.up();
    await page.waitForTimeout(100);
    assert.equal(
      preview.sent().some(({ type }) => type === "select"),
      false,
    );
  });

  it("marks the block that the cursor is in", async () => {
    const mark = preview.page.locator(".mark-cursor");
    assert.equal(await mark.getAttribute("d"), null);
    const position = { line: lineOf("size 24"), character: 5 };
    await preview.post({ type: "cursor", cursor: { uri: URI, position } });
    await preview.page.waitForFunction(
      () => document.querySelector(".mark-cursor")?.hasAttribute("d") === true,
    );
    const { box } = twoWalls(1).scene.walls[0]!.openings[0]!;
    assert.match((await mark.getAttribute("d"))!, new RegExp(`^M${box.left} `));
    await paint(preview, twoWalls(2));
    assert.notEqual(await mark.getAttribute("d"), null, "it stays over an update");
    await preview.post({ type: "cursor", cursor: null });
    await preview.page.waitForFunction(
      () => document.querySelector(".mark-cursor")?.hasAttribute("d") === false,
    );
  });

  it("walks from piece to piece by keys, speaks them and goes to their lines", async () => {
    const { page } = preview;
    await page.locator(".stage").focus();
    await page.keyboard.press("p");
    await page.keyboard.press("ArrowRight");
    await page.locator('[role="log"]', { hasText: "A piece of" }).waitFor();
    assert.match(
      await page.locator('[role="log"]').innerText(),
      /^A piece of (back|side), visible 5 7\/8 x 2 7\/8 in$/,
    );
    await page.keyboard.press("Enter");
    await preview.waitFor("select");
    await page.keyboard.press("Escape");
    assert.equal(await page.locator(".mark-piece").getAttribute("d"), null);
  });

  it("moves and zooms by keys", async () => {
    const { page } = preview;
    await page.locator(".stage").focus();
    const [left, , width] = await seenBox(preview);
    await page.keyboard.press("+");
    await page.keyboard.press("ArrowRight");
    const [moved, , narrower] = await seenBox(preview);
    assert.ok(Math.abs(narrower! - width! / 1.25) < 0.01);
    assert.ok(moved! > left!);
    await page.keyboard.press("0");
    await page.waitForTimeout(50);
    assert.deepEqual((await seenBox(preview))[2], width);
  });

  it("is as it was after a reload of the window", async () => {
    const { page } = preview;
    await page.locator(".stage").focus();
    await page.keyboard.press("+");
    await page.keyboard.press("ArrowDown");
    await page.getByText("Layers").click();
    await page.getByLabel("Dimensions").uncheck();
    await page.getByRole("button", { name: "Pin" }).click();
    const before = await seenBox(preview);
    await page.waitForFunction(() => sessionStorage.getItem("state")?.includes('"pinned":true'));
    const past = preview.sent().length;
    await page.reload();
    await preview.waitFor("ready", past);
    assert.equal(
      await page.getByRole("button", { name: "Pin" }).getAttribute("aria-pressed"),
      "true",
    );
    await preview.post({ type: "plan", uri: URI, name: "two-walls", pinned: true, marked: true });
    await paint(preview, twoWalls(1));
    const after = await seenBox(preview);
    after.forEach((value, i) =>
      assert.ok(Math.abs(value - before[i]!) < 1e-6, `${String(after)} for ${String(before)}`),
    );
    assert.equal(await page.locator('[data-layer="dimensions"]').first().isVisible(), false);
  });

  it("shows another plan from the beginning, and the first one as it was left", async () => {
    const { page } = preview;
    await page.locator(".stage").focus();
    await page.keyboard.press("+");
    const left = await seenBox(preview);
    const other = { ...twoWalls(1, TWO_WALLS.replace("sash {", "light {")), uri: "file:///other" };
    await preview.post({
      type: "plan",
      uri: other.uri,
      name: "other",
      pinned: false,
      marked: true,
    });
    await paint(preview, other);
    assert.equal(await page.locator('g[id$="-opening-light"]').count(), 1);
    assert.notDeepEqual(await seenBox(preview), left);
    await preview.post({ type: "plan", uri: URI, name: "two-walls", pinned: false, marked: true });
    await paint(preview, twoWalls(1));
    (await seenBox(preview)).forEach((value, i) => assert.ok(Math.abs(value - left[i]!) < 1e-6));
  });

  it("shows labels as text, whatever they hold", async () => {
    const evil = `<img src=x onerror=alert(1)>`;
    const text = TWO_WALLS.replace("Back wall", evil).replace("Two walls", evil);
    await paint(preview, twoWalls(2, text));
    assert.equal(await preview.page.locator("img").count(), 0);
    assert.ok((await preview.page.getByText(evil).count()) > 0);
  });

  async function spotOn(wall: string, x: number, y: number): Promise<[number, number]> {
    const { at } = twoWalls(1).scene.walls.find((each) => each.name === wall)!;
    return pixelOf(preview, at.x + x, at.y + y);
  }

  async function outlineOfFirst(name: string): Promise<string> {
    const wall = twoWalls(1).scene.walls.find((each) => each.name === name)!;
    const group = wall.pieces.find(({ course, kind }) => course === 1 && kind === "whole")!;
    const [left, top, right, bottom] = group.boxes;
    return Promise.resolve(`M${[left, bottom, right, bottom, right, top, left, top].join(" ")}Z`);
  }
});

describe("the preview before a picture comes", function () {
  needsBrowser(this);

  it("is an empty page without complaints", async () => {
    const preview = await openPreview();
    await preview.post({ type: "plan", uri: URI, name: "two-walls", pinned: false, marked: true });
    await preview.page.getByRole("button", { name: "Fit" }).click();
    await preview.page.locator(".stage").focus();
    for (const key of ["p", "ArrowUp", "+", "0", "1", "w"]) await preview.page.keyboard.press(key);
    await preview.page.mouse.click(300, 300);
    await preview.post({ type: "export", format: "svg" });
    await preview.page.waitForTimeout(100);
    assert.deepEqual(preview.complaints, []);
    await preview.close();
  });
});
