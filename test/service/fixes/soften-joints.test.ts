import assert from "node:assert/strict";
import { mend, mendsOf } from "./mending.js";

const CODE = "movement/too-far";

/** A wall of 24 x 12 in tile, dry: at most 25 ft from soft joint to soft joint. */
const plan = (size: string, lay = "", { bond = "stack", more = "" } = {}) => `plan "Corridor"
units inch
tile field "f" {
  face 24 x 12
  thickness 3/8
  variation 1/64
}
tile base "b" {
  face 24 x 6
  thickness 3/8
  variation 1/64
}
wall long "Long" {
  size ${size}
  bottom floor movement 1/8
  left wall movement 1/8
  right wall movement 1/8
  top free
${more}
  lay field {
    bond ${bond}
    joint 1/8
    across full tile from left
    up full course from bottom
${lay}  }
}
`;

describe("soft joints that stand too far apart", () => {
  it("get one more, at the joint nearest to the middle", () => {
    const mended = mend(plan("40ft x 96"), CODE, /^Make the joint at 241 5\/16 in soft$/);
    assert.match(mended.text, /\n {4}movement joint at 241 5\/16\n {2}}\n/);
    assert.ok(!mended.codes.includes(CODE));
    assert.ok(!mended.codes.includes("movement/no-joint"));
  });

  it("get as many as it takes, in each stretch that is too long", () => {
    const mended = mend(plan("80ft x 96"), CODE, /^Make the joints at .*, .*, .* soft$/);
    assert.equal(mended.text.match(/movement joint at/g)!.length, 3);
    assert.ok(!mended.codes.includes(CODE));
    const beside = mend(plan("80ft x 96", "    movement joint at 20ft\n"), CODE, /^Make/);
    assert.equal(beside.text.match(/movement joint at/g)!.length, 3);
    assert.ok(!beside.codes.includes(CODE));
  });

  it("get one over a course where the tile is too high", () => {
    const mended = mend(plan("96 x 40ft"), CODE, /^Make the joint over course 20 soft$/);
    assert.match(mended.text, /\n {4}movement joint over course 20\n/);
    assert.ok(!mended.codes.includes(CODE));
  });

  it("get one each way where it is both", () => {
    const text = plan("40ft x 40ft");
    assert.deepEqual(
      mendsOf(text, CODE)
        .map(({ title }) => title)
        .filter((title) => title.startsWith("Make")),
      ["Make the joint at 241 5/16 in soft", "Make the joint over course 20 soft"],
    );
  });

  it("get one in each lay that stands there, where their joints are in line", () => {
    const base =
      "  lay base {\n    bond stack\n    joint 1/8\n    across full tile from left\n    courses 2\n  }\n";
    const mended = mend(
      plan("40ft x 96", "", { more: base }),
      CODE,
      /^Make the joint at 241 5\/16 in soft$/,
    );
    assert.equal(mended.text.match(/movement joint at/g)!.length, 2);
    assert.ok(!mended.codes.includes(CODE));
  });

  it("are counted through a list of courses", () => {
    const list = "    courses 2 of base, rest of field\n";
    const mended = mend(plan("96 x 40ft", list), CODE, /^Make the joint over course 21 soft$/);
    assert.ok(!mended.codes.includes(CODE));
  });

  it("have no mend where the bond has no joint that goes through", () => {
    const running = mendsOf(plan("40ft x 96", "", { bond: "running 1/3" }), CODE);
    assert.deepEqual(
      running.map(({ title }) => title),
      ["Allow movement/too-far here"],
    );
  });
});
