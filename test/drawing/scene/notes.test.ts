import assert from "node:assert/strict";
import { cautionsBlock, findingsBlock, legendBlock } from "../../../src/drawing/scene/notes.js";
import { sceneOf, planOf, wallText } from "../support/scene-of.js";
import { findingGroups } from "../../../src/drawing/scene/finding-groups.js";

const form = { em: 10, width: 300, columns: 1 };

const kindsIn = (text: string) =>
  legendBlock(sceneOf(text).walls, form).swatches.map((s) => s.kind);

describe("the legend", () => {
  it("has only what occurs", () => {
    const plain = kindsIn(planOf(wallText()));
    assert.deepEqual(plain, ["whole", "cut", "grout", "soft", "level", "centre"]);
    const fuller = kindsIn(
      planOf(
        wallText(
          "  right free trim nose\n  bottom pan measured 0: 0, 40: 1 movement 1/8\n  hole h at 9, 9 across 1\n  niche n {\n    at 20, 15\n    size 5 x 5\n    movement 1/8\n  }",
        ),
      ),
    );
    for (const kind of ["trim", "scribe", "hole", "notch"] as const) {
      assert.ok(fuller.includes(kind), kind);
    }
  });
});

describe("the findings' list", () => {
  const nowhere = { line: 0, character: 0 };
  const finding = {
    code: "cut/sliver",
    severity: "error",
    message: "3 pieces are 1/2 in wide",
    file: "",
    range: { start: nowhere, end: nowhere },
    wall: "back",
  } as const;

  it("says grade, code and message, and how many more are like it", () => {
    const { groups } = findingGroups(["back"], [finding, finding]);
    const { labels, badges } = findingsBlock(groups, 0, true, { ...form, width: 3000 });
    assert.equal(
      labels[1]!.text,
      "back: error cut/sliver: 3 pieces are 1/2 in wide (and 1 more like it)",
    );
    assert.equal(badges[0]!.number, "1");
  });

  it("says how many numbers are left out", () => {
    const { labels } = findingsBlock([], 4, false, form);
    assert.equal(labels[1]!.text, "and 4 more");
  });
});

describe("the caution", () => {
  const words = (glazed: boolean) =>
    cautionsBlock(glazed, form)
      .labels.map(({ text }) => text)
      .join(" ");

  it("warns of dust and defers to code, makers and trades", () => {
    assert.match(words(false), /silica dust: cut wet or with extraction/);
    assert.match(words(false), /Follow local code, the makers' instructions and a licensed trade/);
  });

  it("speaks of glass where there is a window", () => {
    assert.match(words(true), /safety glazing/);
    assert.doesNotMatch(words(false), /glazing/);
  });
});
