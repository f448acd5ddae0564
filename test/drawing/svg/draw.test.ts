import assert from "node:assert/strict";
import { registerWindow, SVG } from "@svgdotjs/svg.js";
import { createSVGWindow } from "svgdom";
import { draw } from "../../../src/drawing/index.js";
import { pictureOf, planOf, sceneOf, wallText } from "../support/scene-of.js";

describe("drawing a scene", () => {
  const svg = pictureOf(planOf(wallText()));

  it("says what it is to those who don't see it", () => {
    assert.match(svg, /^<svg [^>]*role="img" aria-labelledby="gl-title gl-desc"/);
    assert.ok(svg.includes('<title id="gl-title">Test plan</title>'));
    assert.match(svg, /<desc id="gl-desc">Back wall: 40 across/);
    assert.match(
      svg,
      /data-wall="back" transform="translate\([^"]*\)">\n<title>Back wall<\/title>/,
    );
  });

  it("is as large as its view, from corner to corner", () => {
    const { view } = sceneOf(planOf(wallText()));
    const size = [view.right - view.left, view.bottom - view.top].map(
      (n) => Math.round(n * 1000) / 1000,
    );
    assert.ok(svg.includes(`viewBox="${view.left} ${view.top} ${size[0]} ${size[1]}"`));
  });

  it("takes out what was drawn before", () => {
    const window = createSVGWindow();
    registerWindow(window, window.document);
    const root = SVG(window.document.documentElement as unknown as SVGSVGElement);
    const scene = sceneOf(planOf(wallText()));
    draw(scene, root);
    const once = root.svg();
    draw(scene, root);
    assert.equal(root.svg(), once);
  });
});
