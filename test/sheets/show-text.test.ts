import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { showText } from "../../src/sheets/index.js";
import { ALONE } from "../support/solve-text.js";

const PLAN = `plan "Bench"
units inch
bed 1/8
tile field {
  face 4 x 4
  thickness 1/4
}
trim nose {
  face 6 x 2
  thickness 1/4
}
wall back "Back wall" {
  size 41 3/8 x 22 7/8
  bottom pan measured 0: 0, 41: 1/4 movement 1/8
  left corner side under movement 1/8
  top ceiling
  right free trim nose
  window light {
    at 12 3/8, 8 3/8
    size 8 x 8
    frame nose butt
    movement 1/8
  }
  hole spout at 4, 4 across 1 plate 2 x 3
  lay field {
    bond stack
    joint 1/8
    across full tile from left
  }
}
wall side {
  size 20 x 10
  right corner back over movement 1/8
}
`;

function shown(text: string): string {
  const { solved, diagnostics } = run(text, ALONE);
  return [...showText(solved, diagnostics)].join("");
}

describe("showText", () => {
  const text = shown(PLAN);

  it("tells the bare wall, its sides, openings and holes", () => {
    for (const line of [
      'wall back "Back wall"',
      "  41 3/8 in x 22 7/8 in",
      "  bottom pan, soft joint 1/8 in, measured 0 in at 0 in, 1/4 in at 41 in",
      "  left corner side under, soft joint 1/8 in",
      "  right free trim nose",
      "  top ceiling",
      "  window light at 12 3/8 in, 8 3/8 in, 8 in x 8 in",
      "  hole spout at 4 in, 4 in, 1 in across, plate 2 in x 3 in",
    ]) {
      assert.ok(text.includes(`${line}\n`), line);
    }
  });

  it("tells how it is laid, and what was chosen", () => {
    assert.ok(text.includes("  tile field 4 in x 4 in, stack bond\n  joint 1/8\n"));
    assert.ok(text.includes("  across full tile from left\n"));
    assert.match(text, / {2}up [^\n]*, chosen\n/);
  });

  it("tells each course in a line without its number, with what interrupts it", () => {
    const courses = /from the bottom up\n((?: {4}.*\n)+)/.exec(text)![1]!.split("\n").slice(0, -1);
    assert.equal(courses.length, run(PLAN, ALONE).solved.walls[0]!.lays[0]!.courses.length);
    assert.ok(
      courses.some((line) => line.includes(" | light | ")),
      courses.join("\n"),
    );
    assert.ok(courses.some((line) => line.includes("with a hole")));
    assert.ok(courses[0]!.includes("scribed "));
  });

  it("tells trim piece by piece", () => {
    assert.match(text, / {2}trim nose, bottom of light: 2 at 5 15\/16 in\n/);
    assert.match(text, / {2}trim along the right: 5 1\/16 in \| 2 whole \| 5 1\/16 in\n/);
  });

  it("is a line more for a course more", () => {
    const plan = (up: string) =>
      `units inch\ntile field {\n  face 4 x 4\n  thickness 1/4\n}\nwall back {\n  size 20 x ${up}\n  lay field {\n    bond stack\n    joint 1/8\n    across full tile from left\n    up full course from bottom\n  }\n}\n`;
    const lines = (up: string) =>
      shown(plan(up))
        .split("\n")
        .filter((line) => line.startsWith("    "));
    const [low, high] = [lines("12 1/2"), lines("16 5/8")];
    assert.equal(high.length, low.length + 1);
    assert.deepEqual(high.slice(1), low);
  });

  it("tells findings without their lines in the text", () => {
    assert.ok(shown(PLAN) === shown(`# a comment\n\n${PLAN}`));
    assert.match(
      shown(PLAN.replace("joint 1/8", "joint 1/32")),
      /\nfindings\n(?: {2}.*\n)* {2}back: error joint\/too-narrow: /,
    );
  });

  it("tells the spacers nearest to a joint that was chosen as wide as none", () => {
    // 5 courses of 4 in, each with a joint of 0.08 in, between joints of 1/8 in.
    const wall = `wall back {
  size 40 x 20.65
  bottom pan movement 1/8
  top ceiling movement 1/8
  left free
  right free
  lay field {
    bond stack
    joint 1/16 to 3/16
    across full tile from left
    up full course from bottom
  }
}
`;
    const tile = "units inch\ntile field {\n face 4 x 4\n thickness 1/4\n}\n";
    const { solved, diagnostics } = run(
      `prefer {\n whole courses at top\n}\n${tile}${wall}`,
      ALONE,
    );
    const text = [...showText(solved, diagnostics)].join("");
    assert.match(text, /^ {2}joint 0\.08, chosen, nearest spacers 5\/64 in$/m);
  });
});
