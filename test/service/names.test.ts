import assert from "node:assert/strict";
import { parse } from "../../src/language/index.js";
import { isSameName, nameAt, type NamePlace, namesOf } from "../../src/service/names.js";

const TEXT = `let a = 1
tile t {
}
wall w {
  size a x 9
  left corner v under
  right free trim n
  window s {
    frame n mitre
  }
  lay t {
    across tile centred on s
    up full course over s
  }
}
wall v {
  door s {
  }
  lay t {
    across tile centred on wall
  }
}
`;

const told = ({ kind, word, declares, wall }: NamePlace): string =>
  `${kind} ${word.text}${wall === null ? "" : ` of ${wall}`}${declares ? " declared" : ""}`;

describe("the names of a text", () => {
  it("stand in its order, with what they are and the wall in which they hold", () => {
    assert.deepEqual(namesOf(parse(TEXT)).map(told), [
      "let a declared",
      "tile t declared",
      "wall w declared",
      "let a",
      "wall v",
      "trim n",
      "opening s of w declared",
      "trim n",
      "tile t",
      "opening s of w",
      "opening s of w",
      "wall v declared",
      "opening s of v declared",
      "tile t",
    ]);
  });

  it("of openings are another's in another wall, also where a wall has no name", () => {
    const openings = namesOf(parse(TEXT)).filter(({ word }) => word.text === "s");
    assert.deepEqual(
      openings.map((each) => isSameName(each, openings[0]!)),
      [true, true, true, false],
    );
    const nameless = namesOf(parse("wall {\n  door s {\n  }\n}\nwall {\n  door s {\n  }\n}\n"));
    assert.equal(nameless.length, 2);
    assert.ok(!isSameName(nameless[0]!, nameless[1]!));
  });

  it("of one spelling are not the same when they are of different kinds", () => {
    const [length, tile] = namesOf(parse("let a = 1\ntile a {\n}\n"));
    assert.ok(!isSameName(length!, tile!));
  });

  it("are found at a place, also just behind them", () => {
    const names = namesOf(parse(TEXT));
    const at = (offset: number): string | undefined => nameAt(names, offset)?.word.text;
    assert.deepEqual([at(3), at(4), at(5), at(6)], [undefined, "a", "a", undefined]);
  });
});
