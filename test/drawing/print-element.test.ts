import assert from "node:assert/strict";
import { printElement } from "../../src/drawing/print-element.js";
import { addText, add } from "../../src/drawing/svg/pen.js";
import { drawn } from "./support/sheet.js";

describe("printing an element", () => {
  it("gives each element a line of its own and closes an empty one", () => {
    const svg = drawn((into) => {
      add(add(into, "g", { id: "a" }), "path", { d: "M0 0H1" });
    });
    assert.equal(svg, '<g>\n<g id="a">\n<path d="M0 0H1"/>\n</g>\n</g>\n');
  });

  it("escapes texts and attributes", () => {
    const svg = drawn((into) => {
      addText(into, "text", `<&>"'`, { id: `<&>"'` });
    });
    assert.equal(svg, `<g>\n<text id="&lt;&amp;&gt;&quot;'">&lt;&amp;&gt;&quot;'</text>\n</g>\n`);
  });

  it("prints anything that has a name, attributes and children", () => {
    const element = { nodeName: "a", attributes: [{ name: "b", value: "c" }], childNodes: [] };
    assert.equal(printElement(element), '<a b="c"/>\n');
  });
});
