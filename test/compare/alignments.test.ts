import assert from "node:assert/strict";
import { alignmentChanges, alignmentsOf } from "../../src/compare/alignments.js";
import { edited, told, WALL } from "./wall.js";

function alignments(...edits: readonly (readonly [string, string])[]) {
  const { solved } = told(edited(WALL, ...edits));
  return alignmentsOf(solved, solved.walls[0]!);
}

describe("alignmentsOf", () => {
  it("finds an opening's sides on joints", () => {
    const sides = alignments().flatMap((each) => ("side" in each ? [each.side] : []));
    assert.deepEqual(sides, ["left", "right", "bottom", "top"]);
    const moved = alignments(["at 16 5/8", "at 17 5/8"]);
    assert.deepEqual(
      moved.flatMap((each) => ("side" in each ? [each.side] : [])),
      ["bottom", "top"],
    );
  });

  it("counts a side anywhere in a joint, and not a nanometre beyond", () => {
    const sides = (x: string) =>
      alignments(["at 16 5/8", `at ${x}`]).flatMap((each) => ("side" in each ? [each.side] : []));
    // The niche takes 1/8 more at its left; the joint there is from 16 1/2 to 16 5/8.
    assert.ok(sides("16 3/4").includes("left"));
    assert.ok(!sides("425.450001mm").includes("left"));
  });

  it("finds what stands on a centre line", () => {
    const on = (list: ReturnType<typeof alignments>) =>
      list.flatMap((each) => (each.kind === "centred" ? [`${each.what} ${each.on}`] : []));
    assert.deepEqual(on(alignments()), ["joint wall", "joint niche shelf"]);
    assert.deepEqual(on(alignments(["full tile from left", "tile centred on wall"])), [
      "tile wall",
      "tile niche shelf",
    ]);
    assert.deepEqual(on(alignments(["full tile from left", "tile centred at 3"])), []);
  });
});

describe("courses that meet at a corner", () => {
  const WALLS = (up: string, above: string) => `units inch
tile field {
  face 4 x 4
  thickness 1/4
}
wall back {
  size 40 x 24
  right corner side over movement 1/8
  lay field {
    bond stack
    joint 1/8
    across full tile from left
    up joint at 0
    courses 2
  }
  lay field as high {
    over field
    bond stack
    joint 1/8
    across full tile from left
    up joint at ${above}
  }
}
wall side {
  size 40 x 24
  left corner back under movement 1/8
  lay field {
    bond stack
    joint 1/8
    across full tile from right
    up joint at ${up}
  }
}
`;
  const met = (up: string, above: string) => {
    const { solved } = told(WALLS(up, above));
    return solved.walls.flatMap((wall) =>
      alignmentsOf(solved, wall).flatMap((each) =>
        each.kind === "courses meet" ? [`${wall.wall.name}: ${each.wall}`] : [],
      ),
    );
  };

  it("are told once, of the wall whose tile covers the other's, as in the rules", () => {
    assert.deepEqual(met("0", "8 1/4"), ["back: side"]);
    assert.deepEqual(met("1", "8 1/4"), []);
  });

  it("are those of every lay that reaches the corner", () => {
    assert.deepEqual(met("0", "9 1/4"), []);
  });
});

describe("alignmentChanges", () => {
  const common = { before: (name: string) => name, after: (name: string) => name };

  it("tells those gained and those lost, and no others", () => {
    const [old, now] = [alignments(), alignments(["at 16 5/8", "at 17 5/8"])];
    const changes = alignmentChanges(old, now, common);
    assert.equal(changes.filter(({ after }) => after === null).length, 3);
    assert.equal(changes.filter(({ before }) => before === null).length, 0);
  });

  it("knows a renamed opening", () => {
    const now = alignments(["niche shelf", "niche ledge"]);
    const words = (name: string) => name.replace("shelf", "ledge");
    assert.deepEqual(alignmentChanges(alignments(), now, { ...common, before: words }), []);
  });
});
