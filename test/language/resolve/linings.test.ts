import assert from "node:assert/strict";
import { resolve, parse } from "../../../src/language/index.js";
import { ALONE } from "../../support/solve-text.js";

function read(lines: string, kind = "niche") {
  const text = `units mm
tile field {
 face 200 x 100
 thickness 8
}
tile mosaic {
 face 48 x 48
 thickness 6
}
wall back {
 size 1200 x 1000
 ${kind} shelf {
 at 400, 300
 size 400 x 300
 ${lines}
 }
 lay field {
 bond stack
 joint 2
 }
}
`;
  const { plan, diagnostics } = resolve(parse(text), ALONE);
  const inside = plan.walls[0]!.openings[0]!.inside;
  return { inside, told: diagnostics.map(({ message }) => message) };
}

describe("how the inside of an opening is laid", () => {
  it("is the wall's affair where the plan doesn't say", () => {
    assert.deepEqual(read("depth 90").inside, { depth: 90e6, fall: null, tiled: true, lays: {} });
  });

  it("is said of all of it, or of a surface, which goes before", () => {
    const { inside, told } = read("depth 90\nback mosaic stack joint 3\ninside field running 1/2");
    assert.deepEqual(told, []);
    const { back, left, right, sill, head } = inside!.lays;
    assert.deepEqual(
      [back, left, right, sill, head].map((lay) => lay?.tile.name),
      ["mosaic", "field", "field", "field", "field"],
    );
    assert.deepEqual([back!.bond, back!.joint], [{ kind: "stack" }, 3e6]);
    assert.deepEqual([sill!.bond, sill!.joint], [{ kind: "running", p: 1, q: 2 }, null]);
  });

  it("is said of both sides at once", () => {
    assert.deepEqual(Object.keys(read("depth 90\nsides mosaic").inside!.lays), ["left", "right"]);
  });

  it("may be not at all", () => {
    assert.equal(read("depth 90\nuntiled", "window").inside!.tiled, false);
  });

  it("is told where it makes no sense", () => {
    assert.match(read("depth 90\nback gravel").told[0]!, /found no tile called `gravel`/);
    assert.match(read("depth 90\nback mosaic\nback field").told[0]!, /found `back` again/);
    assert.match(read("back mosaic").told[0]!, /without a depth, wanted a `depth`/);
    assert.match(read("depth 90\nback mosaic", "bench").told[0]!, /inside of a bench/);
    assert.match(read("depth 90\nback mosaic running 3/2").told[0]!, /no part of a module/);
  });
});
