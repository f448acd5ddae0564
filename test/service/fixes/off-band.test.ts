import assert from "node:assert/strict";
import { bandText } from "../../rules/band-text.js";
import { mend, mendsOf } from "./mending.js";

const CODE = "band/cut-through";
const shelf = (at: string, kind = "niche") =>
  bandText({ back: `  ${kind} shelf {\n    at ${at}\n    size 12 x 12\n    movement 1/8\n  }` });

describe("an opening whose sill or head cuts a band", () => {
  it("is moved to the nearer edge of the band", () => {
    const down = mend(
      shelf("20, 25 1/2"),
      CODE,
      /shelf 3\/8 in down: its sill on the bottom of band liner/,
    );
    assert.ok(down.text.includes("at 20, 25 1/8\n"), down.text);
    assert.ok(!down.codes.includes(CODE));
    // What the niche takes ends 1/8 in over its own head.
    const up = mend(
      shelf("20, 13 1/2"),
      CODE,
      /shelf 3\/8 in up: its head on the top of band liner/,
    );
    assert.ok(up.text.includes("at 20, 13 7/8\n"), up.text);
    assert.ok(!up.codes.includes(CODE));
  });

  it("stays where it is no window or niche", () => {
    const moves = (text: string) =>
      mendsOf(text, CODE).filter(({ title }) => title.startsWith("Move"));
    assert.equal(moves(shelf("20, 25 1/2", "window")).length, 1);
    assert.deepEqual(moves(shelf("20, 25 1/2", "bench")), []);
  });
});
