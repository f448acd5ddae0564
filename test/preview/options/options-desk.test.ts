import assert from "node:assert/strict";
import type { PlanOptions } from "../../../src/service/index.js";
import { needsBrowser, type OpenPreview } from "../support/open-preview.js";
import { paint, showPlan, TWO_WALLS, twoWalls, URI } from "../support/show-plan.js";
import { planOptions, WISHED } from "../support/plan-options.js";

describe("the layouts in the preview", function () {
  needsBrowser(this);
  let preview: OpenPreview;
  let options: PlanOptions;

  before(async () => {
    options = await planOptions(WISHED);
  });

  beforeEach(async () => {
    preview = await showPlan({}, twoWalls(1, WISHED));
  });

  afterEach(async () => {
    assert.deepEqual(preview.complaints, [], "nothing fails, nothing is refused by the policy");
    await preview.close();
  });

  const turn = () => preview.page.getByRole("button", { name: "Options", exact: true }).click();
  const asked = () => preview.sent().filter(({ type }) => type === "options");
  const status = () => preview.page.locator(".options [role=status]").innerText();
  const current = () => preview.page.locator(".options[aria-busy=false]").waitFor();
  const show = async (): Promise<void> => {
    await turn();
    await preview.waitFor("options");
    await preview.post({ type: "options", options });
    await preview.page.locator(".option").first().waitFor();
  };

  it("are asked for when they are shown, and not before", async () => {
    await paint(preview, twoWalls(2, WISHED));
    await preview.page.waitForTimeout(500);
    assert.deepEqual(asked(), []);
    assert.equal(await preview.page.locator(".options").isVisible(), false);
    await turn();
    assert.deepEqual(await preview.waitFor("options"), { type: "options", uri: URI, wall: null });
    assert.match(await status(), /^Working out/);
  });

  it("stand side by side, and say how many there are", async () => {
    await show();
    const [group] = options.groups;
    assert.equal(await preview.page.locator(".option").count(), group!.options.length);
    assert.equal(await status(), `${group!.options.length} layouts`);
    const places = () =>
      preview.page.locator(".option").evaluateAll((cards) =>
        cards.map((card) => {
          const { left, top } = card.getBoundingClientRect();
          return [left, top] as const;
        }),
      );
    const [one, other] = await places();
    assert.equal(one![1], other![1]);
    assert.ok(one![0] < other![0]);
    await preview.page.setViewportSize({ width: 360, height: 760 });
    const [upper, lower] = await places();
    assert.ok(upper![1] < lower![1], "under each other where there is little room");
  });

  it("are taken by their place in the version that they are of", async () => {
    await show();
    await preview.page.getByRole("button", { name: "Take B" }).click();
    const taken = await preview.waitFor("take");
    assert.deepEqual(taken, { type: "take", version: 1, group: 0, option: 1 });
  });

  it("are worked out anew once a changed text rests, and can't be taken meanwhile", async () => {
    await show();
    for (const version of [2, 3, 4]) await paint(preview, twoWalls(version, WISHED));
    assert.match(await status(), /has changed/);
    assert.equal(await preview.page.locator(".options").getAttribute("aria-busy"), "true");
    await preview.page.getByRole("button", { name: "Take B" }).click();
    await preview.page.waitForTimeout(600);
    assert.ok(!preview.sent().some(({ type }) => type === "take"));
    const before = asked().length;
    await preview.page.waitForTimeout(600);
    assert.equal(asked().length, before, "once the text rests, and not again");
    await preview.post({ type: "options", options: { ...options, version: 4 } });
    await current();
  });

  it("are a wall's when one is chosen; what was asked before is passed over", async () => {
    await show();
    await preview.page.locator('.walls [data-wall="side"]').click();
    const past = preview.sent().length - 1;
    assert.deepEqual(await preview.waitFor("options", past), {
      type: "options",
      uri: URI,
      wall: "side",
    });
    await preview.post({ type: "options", options });
    await preview.page.waitForTimeout(50);
    assert.equal(await preview.page.locator(".option").count(), 0);
    await preview.post({ type: "options", options: await planOptions(TWO_WALLS, 1, "side") });
    await preview.page.getByRole("heading", { name: "Side wall" }).waitFor();
  });

  it("are worked by keys: one stop for Tab, arrows from card to card; the place is kept over an answer", async () => {
    await show();
    const { page } = preview;
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await page.getByRole("button", { name: "Write A down" }).focus();
    await page.keyboard.press("ArrowRight");
    assert.equal(await focused(), "Take B");
    await page.keyboard.press("Enter");
    await preview.waitFor("take");
    assert.equal(await page.locator('.options button[tabindex="0"]').count(), 1);
    await paint(preview, twoWalls(2, WISHED));
    await preview.post({ type: "options", options: { ...options, version: 2 } });
    await current();
    assert.equal(await focused(), "Take B");
  });

  it("are asked for no more when they are shown no longer", async () => {
    await show();
    await turn();
    const count = asked().length;
    await paint(preview, twoWalls(2, WISHED));
    await preview.page.waitForTimeout(500);
    assert.equal(asked().length, count);
    await preview.post({ type: "options", options });
    assert.equal(await preview.page.locator(".options").isVisible(), false);
  });
});
