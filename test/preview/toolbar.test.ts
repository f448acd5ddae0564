import assert from "node:assert/strict";
import { shareWords } from "../../src/preview/toolbar.js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { seenBox, showPlan, twoWalls } from "./support/show-plan.js";

describe("the toolbar", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan();
  });

  after(() => preview.close());

  const press = (name: string) => preview.page.getByRole("button", { name, exact: true }).click();
  const width = async () => (await seenBox(preview))[2]!;
  const room = () => preview.page.locator(".stage").evaluate(({ clientWidth }) => clientWidth);

  it("shows actual size: an inch of wall on 96 pixels", async () => {
    await press("Actual size");
    assert.ok(Math.abs(((await room()) / (await width())) * 25.4 - 96) < 1e-6);
    assert.equal(await preview.page.locator(".zoom").innerText(), "100 %");
  });

  it("shows the picture as wide as there is room", async () => {
    await press("Width");
    const { left, right } = twoWalls(1).scene.view;
    const [from, , wide] = await seenBox(preview);
    const pixels = ((right - left) / wide!) * (await room());
    assert.ok(Math.abs(pixels - ((await room()) - 20)) < 0.01);
    assert.ok(from! < left && from! + wide! > right);
  });

  it("zooms in and out and fits again", async () => {
    await press("Fit");
    const fitted = await width();
    await press("Zoom in");
    assert.ok(Math.abs((await width()) - fitted / 1.25) < 1e-6);
    await press("Zoom out");
    await press("Zoom out");
    assert.ok(Math.abs((await width()) - fitted * 1.25) < 1e-6);
    await press("Fit");
    assert.equal(await width(), fitted);
  });

  it("fits again when the room changes, until a person moves the picture", async () => {
    const fitted = await width();
    await preview.page.setViewportSize({ width: 700, height: 760 });
    await preview.page.waitForTimeout(100);
    const narrow = await seenBox(preview);
    assert.notEqual(narrow[2], fitted);
    await press("Zoom in");
    const scale = (await room()) / (await width());
    await preview.page.setViewportSize({ width: 1000, height: 760 });
    await preview.page.waitForTimeout(100);
    assert.ok(Math.abs((await room()) / (await width()) - scale) < 1e-6);
  });

  it("pins and lets go", async () => {
    await press("Pin");
    const { pinned } = await preview.waitFor("pin");
    assert.equal(pinned, true);
    const past = preview.sent().length;
    await press("Pin");
    assert.equal((await preview.waitFor("pin", past)).pinned, false);
  });
});

describe("a share of actual size", () => {
  it("has two digits at least", () => {
    assert.equal(shareWords(0.0274), "2.7 %");
    assert.equal(shareWords(1), "100 %");
  });
});
