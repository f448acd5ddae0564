import assert from "node:assert/strict";
import { Resvg } from "@resvg/resvg-js";
import { needsBrowser, type OpenPreview } from "./support/open-preview.js";
import { seenBox, showPlan } from "./support/show-plan.js";

describe("export of what is seen", function () {
  needsBrowser(this);
  let preview: OpenPreview;

  before(async () => {
    preview = await showPlan({ theme: "dark" });
  });

  after(async () => {
    assert.deepEqual(preview.complaints, []);
    await preview.close();
  });

  it("gives the seen part as SVG of its own, in the colours of the theme", async () => {
    await preview.page.getByRole("button", { name: "Save SVG" }).click();
    const { format, data } = await preview.waitFor("exported");
    assert.equal(format, "svg");
    assert.match(data, /^<svg [^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/);
    assert.doesNotMatch(data, /class=|<style|var\(|color-mix|color\(/);
    assert.match(data, new RegExp(`viewBox="${(await seenBox(preview)).join(" ")}"`));
    assert.match(data, /fill="#1f1f1f"/, "the editor's background");
    const { width, height, pixels } = new Resvg(data).render();
    assert.deepEqual([width, height], await roomOfStage());
    assert.ok(new Set(new Uint32Array(pixels.buffer, 0, width * height)).size > 20, "it is drawn");
  });

  it("leaves out layers that are switched off", async () => {
    const { page } = preview;
    await page.getByText("Layers").click();
    await page.getByLabel("Dimensions").uncheck();
    await page.getByLabel("Cuts marked").uncheck();
    await page.keyboard.press("Escape");
    const past = preview.sent().length;
    await preview.post({ type: "export", format: "svg" });
    const { data } = await preview.waitFor("exported", past);
    assert.doesNotMatch(data, /data-layer="dimensions"|data-role="dimension"/);
    assert.match(data, /data-layer="soft"/);
    const whole = /data-kind="whole"[^>]*fill="(#[0-9a-f]{6})"/.exec(data)?.[1];
    const cut = /data-kind="cut"[^>]*fill="(#[0-9a-f]{6})"/.exec(data)?.[1];
    assert.ok(whole !== undefined && whole === cut, `${whole} ${cut}`);
  });

  it("gives PNG, twice as fine as the screen", async () => {
    const past = preview.sent().length;
    await preview.page.getByRole("button", { name: "Save PNG" }).click();
    const { format, data } = await preview.waitFor("exported", past);
    assert.equal(format, "png");
    const png = Buffer.from(data, "base64");
    assert.deepEqual([...png.subarray(0, 8)], [137, 80, 78, 71, 13, 10, 26, 10]);
    const [width, height] = await roomOfStage();
    assert.deepEqual([png.readUInt32BE(16), png.readUInt32BE(20)], [2 * width!, 2 * height!]);
  });

  function roomOfStage(): Promise<number[]> {
    return preview.page
      .locator(".stage")
      .evaluate(({ clientWidth, clientHeight }) => [clientWidth, clientHeight]);
  }
});
