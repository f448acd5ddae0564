import assert from "node:assert/strict";
import { run } from "../../../src/engine.js";
import { optionsJson, optionsText } from "../../../src/sheets/index.js";

const TEXT = `prefer {
  whole courses at bottom
  whole courses at sill of sash
}
tile field {
  face 4 x 4
  thickness 1/4
}
wall back {
  size 40 x 30
  bottom free
  top free
  left free
  right free
  window sash {
    at 12, 13
    size 16 x 8
    movement 0
  }
  lay field {
    bond stack
    joint 0
    across full tile from left
  }
}
`;

const { solved } = run(TEXT, { file: "a", root: "", read: () => null });

describe("a room's layouts side by side", () => {
  const text = [...optionsText(solved)].join("");

  it("stand before the walls, each with its start and what it costs against the first", () => {
    assert.match(text, /^\nthe room: 1 wall chosen together out of \d+ heights and joints\n/);
    assert.match(text, / {2}A {2}what the plan has: the best as its wishes are ranked\n/);
    // Lines are folded.
    assert.match(
      text.replace(/\n {5,}/g, " "),
      / {2}B {2}the best without `whole courses at bottom`; against A it costs `whole courses at bottom` \(1 in off\)/,
    );
    assert.match(text, /\n {4}whole courses at sill of sash +1 in off +met\n/);
  });

  it("say what becomes of each wish", () => {
    assert.match(text, /\n {4}whole courses at bottom: met\n/);
    assert.match(text, /\n {4}whole courses at sill of sash: 1 in off; met, it would cost/);
  });

  it("are data in JSON, and nothing in a plan without wishes", () => {
    const { room } = JSON.parse([...optionsJson(solved)].join("")) as {
      room: { options: { wishes: unknown[] }[]; wishes: { met: boolean; nearest: unknown }[] };
    };
    assert.equal(room.options.length, 2);
    assert.deepEqual(room.options[0]!.wishes[1], {
      wish: "whole courses at sill of sash",
      wall: null,
      met: false,
      missed: 25.4,
      unit: "mm",
    });
    assert.deepEqual(
      room.wishes.map(({ met, nearest }) => [met, nearest === null]),
      [
        [true, true],
        [false, false],
      ],
    );
    const plain = run(TEXT.replace(/prefer \{[^}]*\}/, ""), {
      file: "a",
      root: "",
      read: () => null,
    });
    assert.doesNotMatch([...optionsJson(plain.solved)].join(""), /"room"/);
    assert.doesNotMatch([...optionsText(plain.solved)].join(""), /the room/);
  });
});
