import assert from "node:assert/strict";
import { readingText } from "../../src/sheets/reading-text.js";
import { solveClean, solveText } from "../support/solve-text.js";
import { WALL } from "./wall.js";

function reading(text: string): string {
  return [...readingText(solveText(text).solved)].join("");
}

describe("readingText", () => {
  it("tells each wall's size, counts, smallest cut, joint and starts", () => {
    const text = reading(WALL);
    assert.match(text, /^Sheet bench\n\nwall back \(Back wall\): 40 in x 24 in\n/);
    assert.match(
      text,
      /wall side \(Side wall\): 20 in x 24 in\n {2}6 courses, \d+ pieces, \d+ cuts; smallest cut .* in x .* in \(side\/\d+\/\d+\)\n {2}joint 1\/8\n {2}across full tile from left\n {2}up full course from bottom\n\nBefore you cut: /,
    );
  });

  it("marks what the solver chose, and tells out of what and why", () => {
    const text = reading(WALL);
    assert.match(text, /\n {2}across tile centred on wall\n {2}up [^\n]+ {3}# chosen\n/);
    const { choice } = solveClean(WALL).solved.walls[0]!.lays[0]!;
    assert.ok(text.includes(`chosen out of ${choice!.weighed}; `));
    assert.ok(text.includes("decided by out of balance: "));
  });

  it("says so where a wall has no tile, or asks for too many", () => {
    const bare = `plan "Bare"\nunits inch\nwall back "Back" {\n  size 40 x 24\n}\n`;
    assert.match(reading(bare), /\n {2}no tile is laid on it\n$/);
    assert.equal(reading(`units inch\n`), "no walls: a stock list for other plans\n");
    const huge = WALL.replace("size 40 x 24", "size 30000 x 30000");
    assert.match(
      reading(huge),
      /\n {2}not laid: it asks for \d+ pieces, and the most is 2000000\n/,
    );
  });

  it("tells the spacers nearest to a joint that was chosen as wide as none", () => {
    const tile = "units inch\ntile field {\n face 4 x 4\n thickness 1/4\n}\n";
    // 5 courses of 4 in, each with a joint of 0.08 in.
    const wall =
      "wall back {\n size 40 x 20.4\n left free\n right free\n bottom free\n top free\n lay field {\n bond stack\n joint 1/16 to 3/16\n across full tile from left\n up full course from bottom\n }\n}\n";
    const text = reading(`prefer {\n whole courses at top\n}\n${tile}${wall}`);
    assert.match(text, /^ {2}joint 0\.08 {3}# chosen; nearest spacers 5\/64 in$/m);
  });
});
