import assert from "node:assert/strict";
import { buildScene } from "../../src/drawing/index.js";
import { drawForPaper, type PaperElement } from "../../src/drawing/headless.js";
import { paperElement } from "../../src/drawing/paper-element.js";
import type { PrintableElement, PrintableNode } from "../../src/drawing/print-element.js";
import { run } from "../../src/engine.js";
import { exampleSource, exampleText } from "../support/examples.js";

function element(
  nodeName: string,
  attributes: Record<string, string>,
  childNodes: readonly PrintableNode[] = [],
): PrintableElement {
  return {
    nodeName,
    attributes: Object.entries(attributes).map(([name, value]) => ({ name, value })),
    childNodes,
  };
}

function all(root: PaperElement): PaperElement[] {
  return [root, ...root.children.flatMap(all)];
}

describe("an element on paper", () => {
  it("has the tones of black and white, said outright", () => {
    const printed = paperElement(
      element("path", { class: "gl-fill-cut gl-stroke-ink", fill: "#f0f0e4", stroke: "#2d2a26" }),
      1,
    );
    assert.deepEqual(printed.attributes, { fill: "#ffffff", stroke: "#000000" });
  });

  it("has no names and no words for hosts", () => {
    const told = {
      id: "a",
      class: "b",
      role: "img",
      "aria-labelledby": "c",
      "data-wall": "d",
      d: "M0 0",
    };
    assert.deepEqual(paperElement(element("path", told), 1).attributes, { d: "M0 0" });
    const titled = element("g", {}, [element("title", {}), element("path", { id: "gl-paper" })]);
    assert.deepEqual(paperElement(titled, 1).children, []);
  });

  it("has a hairline round each piece of tile, where printers lose a joint", () => {
    const pieces = element("g", { "data-kind": "whole" }, [element("path", { d: "M0 0" })]);
    const [piece] = paperElement(pieces, 0.4).children;
    assert.equal(piece!.attributes["stroke-width"], "0.4");
  });

  it("holds its text", () => {
    const text = { ...element("#text", {}), data: "course 1" };
    assert.equal(paperElement(element("text", {}, [text]), 1).text, "course 1");
  });

  it("makes a whole picture of plain shapes, without a colour", () => {
    const { solved, diagnostics } = run(
      exampleText("faults.tileplan"),
      exampleSource("faults.tileplan"),
    );
    const elements = all(drawForPaper(buildScene(solved, diagnostics), 1));
    assert.ok(elements.length > 100);
    for (const { name, attributes } of elements) {
      assert.ok(["svg", "g", "path", "circle", "text"].includes(name), name);
      for (const paint of [attributes.fill, attributes.stroke]) {
        const [, r, g, b] = /^#(\w\w)(\w\w)(\w\w)$/.exec(paint ?? "") ?? [];
        assert.ok(r === g && g === b, paint);
      }
    }
  });
});
