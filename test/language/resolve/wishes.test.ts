import assert from "node:assert/strict";
import { INCH, planOf, STOCK, told } from "../telling.js";

/** A room of two walls with a window, a niche and a door, and what is wanted of it. */
function room(wishes: string, ofBack = ""): string {
  return `${STOCK}
${wishes}
wall back {
  size 60 x 96
  right corner end under
  window sash {
    at 18, 46
    size 24 x 36
  }
  ${ofBack}
  lay field {
    bond stack
    joint 1/16
  }
}
wall end {
  size 34 x 96
  left corner back over
  niche shelf {
    at 10, 40
    size 12 x 12
  }
  door entry {
    at 24
    size 8 x 80
  }
}
`;
}

const prefer = (...lines: string[]): string => `prefer {\n${lines.join("\n")}\n}`;

describe("wishes", () => {
  it("are kept in their order, those of a wall before those of the room", () => {
    const text = room(prefer("few cuts", "courses meet"), prefer("equal ends"));
    assert.deepEqual(told(text), []);
    assert.deepEqual(
      planOf(text).wishes.map(({ wanted, wall }) => [wanted.kind, wall]),
      [
        ["equal-ends", "back"],
        ["few-cuts", null],
        ["courses-meet", null],
      ],
    );
  });

  it("find an opening in its wall", () => {
    const text = room(prefer("centre on sash", "whole courses at head of entry", "no cut under 2"));
    assert.deepEqual(
      planOf(text).wishes.map(({ wanted }) => wanted),
      [
        { kind: "centre", on: { wall: "back", opening: "sash" } },
        { kind: "whole-at-opening", at: "head", of: { wall: "end", opening: "entry" } },
        { kind: "no-cut", under: 2 * INCH },
      ],
    );
  });

  it("are told where there are none", () => {
    assert.deepEqual(told(room("prefer {\n}")), [
      "plan/wish [prefer] found no wish, wanted one a line, such as `courses meet` or `few cuts`",
    ]);
  });

  it("are told where one is said twice, also in other words, and in a second block", () => {
    assert.deepEqual(told(room(prefer("no cut under 2", "no cut under 1 + 1"))), [
      "plan/said-twice [no] found the same wish again, wanted it once: the first one counts",
    ]);
    assert.deepEqual(told(room(`${prefer("few cuts")}\n${prefer("equal ends")}`)), [
      "plan/said-twice [prefer] found `prefer` again, wanted it once in this block",
    ]);
  });

  it("are told where an opening is unknown, in another wall, or in two", () => {
    assert.deepEqual(told(room(prefer("centre on sach"))), [
      "plan/name-unknown [sach] found no opening called `sach` in this plan; did you mean `sash`?",
    ]);
    assert.deepEqual(told(room("", prefer("centre on shelf"))), [
      "plan/opening-elsewhere [shelf] found `shelf`, which is in the wall `end`, wanted an opening of this wall",
    ]);
    const twice = room(prefer("centre on sash")).replace("niche shelf", "niche sash");
    assert.deepEqual(told(twice), [
      "plan/wish [sash] found `sash`, which the walls `back` and `end` have, wanted the wish in its wall's own `prefer`",
    ]);
  });

  it("are told where they ask for a door's sill, or for a size over the tile's", () => {
    assert.deepEqual(told(room(prefer("whole courses at sill of entry"))), [
      "plan/wish [entry] found the sill of `entry`, which stands on the floor, wanted its head",
    ]);
    assert.deepEqual(told(room(prefer("no cut under 6"))), [
      "plan/wish [6] found 6 in, wanted at most the tile's 5 7/8 in: every cut is under that",
    ]);
    assert.deepEqual(told(room(prefer("no cut under 0"))), [
      "plan/size [0] found 0 in, wanted more than zero",
    ]);
  });

  it("are told where the bond is to go on without a corner", () => {
    const text = `${STOCK}\nwall back {\nsize 60 x 96\n${prefer("bond goes on")}\n}\n`;
    assert.deepEqual(told(text), [
      "plan/wish [bond] found `bond goes on` in a wall without a corner, wanted one, such as `left corner back under`",
    ]);
  });

  it("are told where courses are to meet without a corner", () => {
    const text = `${STOCK}\n${prefer("courses meet")}\nwall back {\nsize 60 x 96\n}\n`;
    assert.deepEqual(told(text), [
      "plan/wish [courses] found `courses meet` in a room without a corner, wanted one, such as `left corner back under`",
    ]);
  });
});
