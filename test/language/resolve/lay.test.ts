import assert from "node:assert/strict";
import { INCH, told, wallOf, wallText } from "../telling.js";

const WINDOW = "  window sash {\n    at 18, 46\n    size 24 x 36\n  }\n";
const lay = (...lines: string[]): string =>
  `${WINDOW}  lay field {\n    ${lines.join("\n    ")}\n  }`;
const FIXED = ["bond stack", "joint 1/16"];

function toldOf(...lines: string[]): string[] {
  return told(wallText(lay(...lines)));
}

describe("a lay", () => {
  it("has its tile, bond and joint, and leaves the rest to the solver", () => {
    const { tile, bond, joint, across, up } = wallOf(lay("bond running 1/3", "joint 1/16"))
      .lays[0]!;
    assert.equal(tile.name, "field");
    assert.deepEqual(bond, { kind: "running", p: 1, q: 3 });
    assert.deepEqual([joint.min, joint.max], [INCH / 16, INCH / 16]);
    assert.deepEqual([across, up], [null, null]);
  });

  it("may give the solver a range of joints", () => {
    const { joint } = wallOf(lay("bond stack", "joint 1/16 to 1/8")).lays[0]!;
    assert.deepEqual([joint.min, joint.max], [INCH / 16, INCH / 8]);
  });

  it("told from the wider joint to the narrower is told, and turned round", () => {
    assert.deepEqual(toldOf("bond stack", "joint 1/8 to 1/16"), [
      "plan/joint-reversed [1/16] found a range from 1/8 in to 1/16 in, wanted the narrower joint first",
    ]);
    const { joint } = wallOf(lay("bond stack", "joint 1/8 to 1/16")).lays[0]!;
    assert.deepEqual([joint.min, joint.max], [INCH / 16, INCH / 8]);
  });

  it("starts across as its line says", () => {
    const across = (line: string): unknown =>
      wallOf(lay(...FIXED, `across ${line}`)).lays[0]!.across;
    const [sash] = wallOf(lay(...FIXED)).openings;
    assert.deepEqual(across("tile centred on wall"), { kind: "tile", centre: { on: "wall" } });
    assert.deepEqual(across("joint centred at 30"), {
      kind: "joint",
      centre: { on: "place", x: 30 * INCH },
    });
    assert.deepEqual(across("tile centred on sash"), {
      kind: "tile",
      centre: { on: "opening", opening: sash },
    });
    assert.deepEqual(across("full tile from right"), { kind: "full-tile", from: "right" });
  });

  it("starts up as its line says", () => {
    const up = (line: string): unknown => wallOf(lay(...FIXED, `up ${line}`)).lays[0]!.up;
    const [sash] = wallOf(lay(...FIXED)).openings;
    assert.deepEqual(up("full course from bottom"), { kind: "full-course", from: "bottom" });
    assert.deepEqual(up("full course under sash"), {
      kind: "at-opening",
      relation: "under",
      opening: sash,
    });
    assert.deepEqual(up("joint at 40"), { kind: "joint", y: 40 * INCH });
  });

  it("without a bond or a joint is told and left out", () => {
    assert.deepEqual(toldOf(), [
      "plan/missing [field] found no `bond`, wanted `bond stack` or one such as `bond running 1/2`",
      "plan/missing [field] found no `joint`, wanted one, such as `joint 1/16`",
    ]);
    assert.equal(wallOf(lay("bond stack")).lays[0], undefined);
    assert.equal(wallOf(lay("joint 1/16")).lays[0], undefined);
  });

  it("with a tile that isn't there is told; a trim is no tile", () => {
    const of = (name: string): string[] =>
      told(wallText(lay(...FIXED).replace("lay field", `lay ${name}`)));
    assert.deepEqual(of("feild"), [
      "plan/name-unknown [feild] found no tile called `feild`; did you mean `field`?",
    ]);
    assert.deepEqual(of("nose"), ["plan/name-unknown [nose] found the trim `nose`, wanted a tile"]);
  });

  for (const ratio of ["0", "1", "3/2", "0/2", "1/2in", "1/5000"]) {
    it(`can't have a bond running ${ratio}`, () => {
      assert.deepEqual(toldOf(`bond running ${ratio}`, "joint 0"), [
        `plan/bond [${ratio}] found no part of a module, wanted a fraction between 0 and 1, such as 1/2 or 1/3`,
      ]);
    });
  }

  it("takes a bond in lowest terms, as a fraction or a decimal", () => {
    assert.deepEqual(wallOf(lay("bond running 2/4", "joint 0")).lays[0]!.bond, {
      kind: "running",
      p: 1,
      q: 2,
    });
    assert.deepEqual(wallOf(lay("bond running 0.25", "joint 0")).lays[0]!.bond, {
      kind: "running",
      p: 1,
      q: 4,
    });
  });

  it("on an opening that isn't there is told with the nearest name", () => {
    assert.deepEqual(toldOf(...FIXED, "across tile centred on sahs"), [
      "plan/name-unknown [sahs] found no opening called `sahs` in this wall; did you mean `sash`?",
    ]);
    assert.deepEqual(toldOf(...FIXED, "across tile centred on wal"), [
      "plan/name-unknown [wal] found no opening called `wal` in this wall; did you mean `wall`?",
    ]);
    assert.equal(wallOf(lay(...FIXED, "up full course over sahs")).lays[0]!.up, null);
  });

  it("on an opening of another wall is told with that wall", () => {
    const text = `${wallText(lay(...FIXED, "up full course over hatch"))}wall far {\n  size 40 x 40\n  niche hatch {\n    at 1, 1\n    size 4 x 4\n  }\n}\n`;
    assert.deepEqual(told(text), [
      "plan/opening-elsewhere [hatch] found `hatch`, which is in the wall `far`, wanted an opening of this wall",
    ]);
  });

  it("on an opening that was left out is told once", () => {
    const text = wallText(
      lay(...FIXED, "up full course over sash").replace("at 18, 46", "at 180, 46"),
    );
    assert.deepEqual(
      told(text).map((message) => message.split(" ")[0]),
      ["plan/opening-outside"],
    );
  });

  it("whose start is broken is told, and the start is left to the solver", () => {
    const lines = [...FIXED, "across tile"];
    assert.deepEqual(toldOf(...lines), [
      "syntax/unexpected [] found the end of the line, wanted `centred`",
    ]);
    assert.equal(wallOf(lay(...lines)).lays[0]!.across, null);
  });

  it("has the rest of the wall only once", () => {
    const lines = `${lay(...FIXED)}\n  lay field {\n    bond stack\n    joint 1/8\n  }`;
    assert.deepEqual(told(wallText(lines)), [
      "plan/lay-twice [field] found a second `lay` that has the rest of the wall, wanted `covers`, `over`, `under`, `courses`, or `at` and `size` in one of them",
    ]);
    assert.equal(wallOf(lines).lays[0]!.joint.min, INCH / 16);
  });
});
