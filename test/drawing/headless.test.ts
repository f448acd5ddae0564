import assert from "node:assert/strict";
import { Resvg } from "@resvg/resvg-js";
import { run } from "../../src/engine.js";
import { drawHeadless } from "../../src/drawing/headless.js";
import { exampleNames, exampleSource, exampleText } from "../support/examples.js";
import { pictureOf, planOf, sceneOf, wallText } from "./support/scene-of.js";

describe("a picture drawn without a page", () => {
  for (const name of exampleNames()) {
    it(`is the same bytes each time: ${name}`, () => {
      const draw = () => drawHeadless(run(exampleText(name), exampleSource(name)).scene());
      assert.equal(draw(), draw());
    });

    it(`has one element a line, and numbers to the thousandth: ${name}`, () => {
      const svg = drawHeadless(run(exampleText(name), exampleSource(name)).scene());
      for (const line of svg.split("\n")) {
        assert.ok((line.match(/<[a-z]/gi) ?? []).length <= 1, line.slice(0, 200));
      }
      const numbers = svg.matchAll(
        / (?:d|x|y|cx|cy|r|viewBox|transform|stroke-width|stroke-dasharray|font-size)="([^"]*)"/g,
      );
      for (const [, written] of numbers) {
        assert.doesNotMatch(written!, /\.\d{4}|\de|NaN|Infinity|undefined|null/);
      }
    });
  }

  it("gives every element that has an id one of its own", () => {
    const svg = drawHeadless(
      run(exampleText("three-walls.tileplan"), exampleSource("three-walls.tileplan")).scene(),
    );
    const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map((match) => match[1]!);
    assert.equal(new Set(ids).size, ids.length);
    assert.ok(
      ids.every((id) => /^gl-[A-Za-z0-9_-]+$/.test(id)),
      "ids need no escape",
    );
  });

  it("escapes titles and drops what no picture can hold", () => {
    const evil = `<script>alert(1)</script> & '>]]> \u0000\u0007\u202e\ufffe end`;
    const svg = pictureOf(planOf(wallText()).replace("Test plan", evil));
    assert.ok(svg.includes("&lt;script&gt;alert(1)&lt;/script&gt; &amp; '&gt;]]&gt; end"));
    assert.ok(!svg.includes("<script"));
    // eslint-disable-next-line no-control-regex
    assert.doesNotMatch(svg, /[\u0000-\u0008\u000b-\u001f\u202a-\u202e\ufffe\uffff]/);
    new Resvg(svg);
  });

  it("changes few lines when one wall of three changes a little", () => {
    const text = exampleText("three-walls.tileplan");
    const source = exampleSource("three-walls.tileplan");
    const before = drawHeadless(run(text, source).scene()).split("\n");
    const changed = text.replace(/at 14[^,]*,/, "at 15,");
    const after = drawHeadless(run(changed, source).scene()).split("\n");
    const kept = new Set(before);
    const fresh = after.filter((line) => !kept.has(line));
    assert.ok(fresh.length > 0, "the change is seen");
    assert.ok(fresh.length < after.length / 5, `${fresh.length} of ${after.length} lines are new`);
  });

  it("can be read by a rasteriser, in the light colours", () => {
    const scene = sceneOf(planOf(wallText()));
    const image = new Resvg(drawHeadless(scene), {
      fitTo: { mode: "width", value: 1000 },
    }).render();
    const scale = 1000 / (scene.view.right - scene.view.left);
    const { at } = scene.walls[0]!;
    const colourAt = (x: number, y: number) => {
      const [column, row] = [(x - scene.view.left) * scale, (y - scene.view.top) * scale];
      const first = 4 * (Math.round(row) * image.width + Math.round(column));
      return `#${image.pixels.subarray(first, first + 3).toString("hex")}`;
    };
    // The middle of the second tile of course 1: 9 1/8 in from the left, 1 1/2 in up.
    assert.equal(colourAt(at.x + 9.25 * 25.4, at.y - 1.6 * 25.4), "#fffdf8");
    assert.equal(colourAt(scene.view.left + 3, scene.view.top + 3), "#f7f3ea");
  });

  it("draws 100,000 pieces in a few hundred elements", () => {
    const text = planOf(wallText().replace("40 x 30", "2000 x 980")).replace(
      "6in x 3in",
      "6in x 3in",
    );
    const wall = sceneOf(text).walls[0]!;
    const pieces = wall.pieces.reduce(
      (sum, { boxes, shapes }) => sum + boxes.length / 4 + shapes.length,
      0,
    );
    assert.ok(pieces > 100_000, `${pieces} pieces`);
    const elements = pictureOf(text).match(/<[a-z]/g)!.length;
    assert.ok(elements < 1500, `${elements} elements`);
  });
});
