import assert from "node:assert/strict";
import { comparisonMarkdown, comparisonText, markdown } from "../../src/compare/index.js";
import { comparisonOf, edited, WALL } from "./wall.js";

const MOVED = comparisonOf(WALL, edited(WALL, ["at 16 5/8, 8 3/8", "at 17 5/8, 8 3/8"]));

describe("a comparison as text", () => {
  it("has a heading a section and a line a fact", () => {
    const text = [...comparisonText(MOVED)].join("");
    assert.match(
      text,
      /^What moved\n {2}niche shelf moves right 1 in\nCuts that changed\n {2}1 piece /,
    );
  });

  it("says that nothing changed but the text", () => {
    const same = comparisonOf(WALL, `${WALL}# a comment\n`);
    assert.equal([...comparisonText(same)].join(""), "Nothing changed but the text.\n");
    assert.equal(
      [...comparisonMarkdown(same, { most: 9 })].join(""),
      "Nothing changed but the text.\n",
    );
  });
});

describe("a comparison as Markdown", () => {
  it("has a list a section", () => {
    const text = [...comparisonMarkdown(MOVED, { most: 12 })].join("");
    assert.match(text, /^\*\*What moved\*\*\n\n- niche shelf moves right 1 in\n\n\*\*Cuts/);
    assert.match(text, /- smallest cut: 4 in x 2 in -&gt; 7\/8 in x 4 in\n/);
  });

  it("counts lines that are too many, but for a single one", () => {
    const one = [...comparisonMarkdown(MOVED, { most: 1 })].join("");
    assert.match(one, /Cuts that changed\*\*\n\n- 1 piece [^\n]*\n- 1 new piece [^\n]*\n\n/);
    const none = [...comparisonMarkdown(MOVED, { most: 0 })].join("");
    assert.match(none, /Cuts that changed\*\*\n\n- and 2 more\n/);
  });

  it("lets no name act: no tag, no mark, no mention, no line of its own", () => {
    assert.equal(
      markdown("<b>*a*</b> @you [x](y)\n# `z`"),
      "&lt;b&gt;\\*a\\*&lt;/b&gt; &#64;you \\[x\\](y) \\# \\`z\\`",
    );
  });
});
