import assert from "node:assert/strict";
import { closeAll, openPlan, openText } from "../plans.js";
import { openPreview, type ShownPreview } from "../preview.js";

describe("the preview's page", () => {
  afterEach(closeAll);

  async function plainPreview(): Promise<ShownPreview> {
    await openPlan("plain.tileplan");
    return openPreview();
  }

  it("lets nothing run or load but its own", async () => {
    const preview = await plainPreview();
    const policy = await preview.ask<string>(
      `document.querySelector('meta[http-equiv="Content-Security-Policy"]').content`,
    );
    const rules = policy.split("; ").map((rule) => rule.split(" "));
    const [none, scripts, styles, images] = rules;
    assert.deepEqual(none, ["default-src", "'none'"]);
    assert.match(scripts!.join(" "), /^script-src 'nonce-[A-Za-z0-9]{32}'$/);
    assert.equal(styles![0], "style-src");
    assert.ok(!styles!.some((source) => source.includes("unsafe")), styles!.join(" "));
    assert.deepEqual(images, ["img-src", "data:"]);
    assert.equal(rules.length, 4);
  });

  it("is held to it: a script without the nonce does not run, and nothing is fetched", async () => {
    const preview = await plainPreview();
    await preview.ask(`{
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.body.append(script);
    }`);
    assert.equal(await preview.ask("window.ran === undefined"), true);
    const fetched = `fetch("https://127.0.0.1/").then(() => "fetched", (error) => String(error))`;
    assert.match(await preview.ask<string>(fetched), /TypeError/);
  });

  it("has loaded nothing but its script and its styles", async () => {
    const preview = await plainPreview();
    const names = await preview.ask<string[]>(
      `performance.getEntriesByType("resource").map((entry) => new URL(entry.name).pathname)`,
    );
    const own = names.map((name) => name.split("/").slice(-2).join("/")).sort();
    assert.deepEqual(own, ["dist/preview.js", "media/preview.css"]);
  });

  it("shows a plan's texts as they are written, tags and all", async () => {
    await openText(
      `plan "<img src=x onerror='window.ran=1'> & <b>"\nunits mm\nwall a "<i>" {\n  size 1000 x 1000\n}\n`,
    );
    const preview = await openPreview();
    await preview.untilDrawn("<img src=x onerror='window.ran=1'> & <b>");
    assert.equal(await preview.ask("window.ran === undefined"), true);
    assert.equal(await preview.ask(`document.querySelectorAll("img, b, i").length`), 0);
  });
});
