import assert from "node:assert/strict";
import { bandText } from "../../rules/band-text.js";
import { wallText } from "../../rules/wall-text.js";
import { mend, mendsOf } from "./mending.js";

const CUT = "band/cut-through";
const OVER = "hole/plate-over";
const hole = (y: string) => bandText({ back: `  hole valve at 30, ${y} across 4 plate 5` });

describe("a hole through a band", () => {
  it("is moved under it or over it, its plate with it", () => {
    for (const [title, y] of [
      [/valve under band liner: 30 in, 22 3\/8 in/, "22 3/8"],
      [/valve over band liner: 30 in, 28 5\/8 in/, "28 5/8"],
    ] as const) {
      const { text, codes } = mend(hole("25 1/2"), CUT, title);
      assert.ok(text.includes(`hole valve at 30, ${y} across 4 plate 5\n`), text);
      assert.ok(!codes.includes(CUT) && !codes.includes(OVER));
    }
  });
});

describe("a plate that runs over something", () => {
  const wall = (line: string) => wallText({ wall: `  hole valve at ${line}` });

  it("is moved with its hole onto the tile, out of a corner both ways", () => {
    const { text, codes } = mend(
      wall("2, 10 3/8 across 2 plate 6"),
      OVER,
      /its plate lies on tile: 3 in, 9 3\/8 in/,
    );
    assert.ok(text.includes("hole valve at 3, 9 3/8 across 2 plate 6\n"), text);
    assert.ok(!codes.includes(OVER));
  });

  it("keeps a named length that doesn't change", () => {
    const text = `let line = 6\n${wall("2, line across 2 plate 6")}`;
    const mended = mend(text, OVER, /on tile/);
    assert.ok(mended.text.includes("hole valve at 3, line across 2 plate 6\n"), mended.text);
  });

  it("stays where it is larger than the wall", () => {
    const moves = mendsOf(wall("12, 6 across 2 plate 20"), OVER).filter(({ title }) =>
      title.startsWith("Move"),
    );
    assert.deepEqual(moves, []);
  });
});
