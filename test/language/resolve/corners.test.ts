import assert from "node:assert/strict";
import { planOf, resolveText, tellingOf } from "../telling.js";

const back = (lines: string): string => `wall back {\n  size 60 x 96\n${lines}}\n`;
const side = (lines: string): string => `wall side {\n  size 36 x 96\n${lines}}\n`;

/** What is told, with its severity and the related place. */
function toldOf(text: string): string[] {
  return resolveText(text).diagnostics.map((diagnostic) => {
    const related = diagnostic.related?.map(({ range }) => range.start.line + 1).join() ?? "";
    return `${diagnostic.severity} ${tellingOf(diagnostic, text)} (${related})`;
  });
}

describe("a corner", () => {
  it("is fine where one wall's left goes under and the other's right over", () => {
    assert.deepEqual(
      toldOf(back("  left corner side under\n") + side("  right corner back over\n")),
      [],
    );
    assert.deepEqual(
      toldOf(side("  left corner back over\n") + back("  right corner side under\n")),
      [],
    );
  });

  for (const lap of ["under", "over"]) {
    it(`can't have both walls ${lap}`, () => {
      const text = back(`  left corner side ${lap}\n`) + side(`  right corner back ${lap}\n`);
      assert.deepEqual(toldOf(text), [
        `error plan/corner-lap [right] found both walls \`${lap}\` at this corner, wanted one \`under\` and one \`over\` (3)`,
      ]);
    });
  }

  it("can't be the left of both walls", () => {
    const text = back("  left corner side under\n") + side("  left corner back over\n");
    assert.deepEqual(toldOf(text), [
      "error plan/corner-side [left] found the left of both walls at this corner, wanted this wall's left to meet the right of `back` (3)",
    ]);
  });

  it("can't be a side that the other wall says meets something else", () => {
    const text = back("  left corner side under\n") + side("  right free\n");
    assert.deepEqual(toldOf(text), [
      "error plan/corner-other [left] found that the right of `side` meets `free`, wanted it to meet `back` (7)",
    ]);
    const third = `${back("  left corner side under\n")}${side("  right corner far over\n")}wall far {\n  size 4 x 4\n  left corner side under\n}\n`;
    assert.deepEqual(toldOf(third), [
      "error plan/corner-other [left] found that the right of `side` meets a corner with `far`, wanted it to meet `back` (7)",
    ]);
  });

  it("that the other wall doesn't speak of is a warning", () => {
    assert.deepEqual(toldOf(back("  left corner side under\n") + side("")), [
      "warning plan/corner-unanswered [left] found that `side` doesn't say what its right side meets, wanted `right corner back over` there (5)",
    ]);
  });

  it("is told once when the other wall's line is broken or names no wall", () => {
    const broken = back("  left corner side under\n") + side("  right corner back\n");
    assert.deepEqual(
      toldOf(broken).map((line) => line.split(" ")[1]),
      ["syntax/unexpected"],
    );
    const unknown = back("  left corner side under\n") + side("  right corner bac over\n");
    assert.deepEqual(
      toldOf(unknown).map((line) => line.split(" ")[1]),
      ["plan/name-unknown"],
    );
  });

  it("can't be with the wall itself, nor at the bottom or the top", () => {
    assert.deepEqual(toldOf(back("  left corner back under\n")), [
      "error plan/corner-self [back] found a corner of `back` with itself, wanted another wall ()",
    ]);
    assert.deepEqual(toldOf(back("  top corner side under\n") + side("")), [
      "error plan/corner-side [top] found a corner at the top, wanted it at the left or the right ()",
    ]);
  });

  it("with a wall that isn't there is told and taken for a plain wall", () => {
    const text = back("  left corner sid under movement 1/8\n") + side("");
    assert.deepEqual(toldOf(text), [
      "error plan/name-unknown [sid] found no wall called `sid`; did you mean `side`? ()",
    ]);
    const { left } = planOf(text).walls[0]!.edges;
    assert.deepEqual(
      [left.meets, left.joint?.width, left.stated],
      [{ kind: "wall" }, 3_175_000, true],
    );
  });

  it("with a wall that can't be drawn is taken for a plain wall, and told once", () => {
    const text = `${back("  left corner side under\n")}wall side {\n  right corner back over\n}\n`;
    assert.deepEqual(
      toldOf(text).map((line) => line.split(" ")[1]),
      ["plan/missing"],
    );
    assert.deepEqual(planOf(text).walls[0]!.edges.left.meets, { kind: "wall" });
  });
});
