import assert from "node:assert/strict";
import { run } from "../../src/engine.js";
import { NM_PER } from "../../src/measure/index.js";
import { boundsOf } from "../../src/solver/index.js";
import { findings } from "../rules/wall-text.js";
import { ALONE, solveClean } from "../support/solve-text.js";
import { outsideText, type OutsideText } from "./outside-text.js";

const inches = (nm: number): number => nm / NM_PER.inch;

/** Where the back wall's tile ends and the pier's begins. */
function meeting(parts: OutsideText): number[] {
  const [back, pier] = solveClean(outsideText(parts)).solved.walls;
  return [inches(back!.region.bounds.right), inches(pier!.region.bounds.left)];
}

const told = (parts: OutsideText, code: string) => findings(outsideText(parts), code);
const messages = (parts: OutsideText): string[] =>
  run(outsideText(parts), ALONE)
    .diagnostics.filter(({ code }) => code.startsWith("plan/"))
    .map(({ code, message }) => `${code} ${message}`);

// 5/16 in of tile and 1/8 in of bed stand on each wall: 7/16 in. The back of the tile stands 1/8 in before it.
describe("an outside corner", () => {
  it("has the wall over run on to the other's face, and the wall under end a joint behind its back", () => {
    assert.deepEqual(meeting({}), [60 + 7 / 16, 1 / 16 - 1 / 8]);
  });

  it("goes by the other wall's tile, not its own", () => {
    assert.deepEqual(meeting({ pier: { tile: "thick" } }), [60.5, -1 / 16]);
  });

  it("ends the wall over with a trim at the outer face, one joint before the tile", () => {
    const right = "outside pier over trim nose";
    assert.deepEqual(meeting({ right }), [60 + 7 / 16 - 2 - 1 / 16, -1 / 16]);
    const [back] = solveClean(outsideText({ right })).solved.walls;
    const boxes = back!.trims.flatMap(({ pieces }) =>
      pieces.map(({ shape }) => boundsOf(shape.outline)),
    );
    assert.deepEqual([...new Set(boxes.map((box) => inches(box.left)))], [58 + 7 / 16]);
    assert.deepEqual([...new Set(boxes.map((box) => inches(box.right)))], [60 + 7 / 16]);
  });

  it("has both walls of a mitre end half a joint before the outer face", () => {
    const right = "outside pier mitre joint 1/16";
    assert.deepEqual(meeting({ right, left: "outside back mitre joint 1/16" }), [
      60 + 7 / 16 - 1 / 32,
      -7 / 16 + 1 / 32,
    ]);
  });

  it("hides nothing, and wants no soft joint", () => {
    const { solved } = solveClean(outsideText());
    for (const { region } of solved.walls)
      assert.deepEqual([region.hiddenLeft, region.hiddenRight], [null, null]);
    assert.deepEqual(told({}, "movement/missing"), []);
  });

  it("shows the end of the wall over: a cut edge there is bare, a whole tile's or a trim isn't", () => {
    const across = "tile centred at 29";
    const [bare] = told({ across }, "edge/bare").filter(({ message }) =>
      message.includes("outside"),
    );
    assert.match(bare!.message, /^8 pieces show cut edges at the outside corner at the right/);
    const none = (parts: OutsideText) =>
      told(parts, "edge/bare").filter(({ message }) => message.includes("outside"));
    assert.deepEqual(none({}), []);
    assert.deepEqual(none({ across, right: "outside pier over trim nose" }), []);
  });

  it("has courses that meet, or it is told by how much they miss", () => {
    assert.deepEqual(told({}, "corner/courses-miss"), []);
    // The back wall's second bed joint is at 6 + 1/16 + 1/32 in, the pier's nearest at 7: 29/32 in over it.
    const text = outsideText().replace(/up full course from bottom(?![^]*up)/, "up joint at 7");
    const [miss] = findings(text, "corner/courses-miss");
    assert.match(
      miss!.message,
      /^at the right corner the courses are 29\/32 in below those of pier/,
    );
  });

  it("carries a bond round it: the tile between the walls' edges is added, or all that stands there swallowed", () => {
    // The back wall's end is 6 - 2 = 4 in wide, so 2 in are left. From the outer face to the pier's tile it is
    // 5/16 in of the back wall's own edge and 1/16 in of joint.
    const across = "tile centred at 59 + 7/16 + 0";
    const shown = (pier: string) => {
      const { solved } = solveClean(outsideText({ across, pier: { across: pier } }));
      const { bounds } = solved.walls[1]!.lays[0]!.pieces;
      return inches(bounds[2]! - bounds[0]!);
    };
    assert.equal(shown("wrapped from back added"), 2);
    assert.equal(shown("wrapped from back swallowed"), 2 - 5 / 16 - 1 / 16);
    assert.equal(shown("mirrored from back"), 4);
    for (const pier of [
      "wrapped from back added",
      "wrapped from back swallowed",
      "mirrored from back",
    ]) {
      assert.deepEqual(told({ across, pier: { across: pier } }, "corner/bond-broken"), []);
    }
    const broken = told({ across, pier: { across: "tile centred at 8" } }, "corner/bond-broken");
    assert.equal(broken.length, 1);
  });
});

describe("an outside corner that two walls state otherwise", () => {
  it("is told where both lap the same way, or one is mitred", () => {
    assert.match(
      messages({ left: "outside back over" })[0]!,
      /corner-lap found both walls `over` at this corner, wanted one `under` and one `over`, or `mitre` at both/,
    );
    assert.match(messages({ left: "outside back mitre" })[0]!, /found `mitre` and `over`/);
  });

  it("is told where one of them says that it is an inside corner", () => {
    assert.match(
      messages({ left: "corner back under movement 1/8" })[0]!,
      /found an inside corner here and an outside one at `back`, wanted one corner/,
    );
  });

  it("is told where they give it two joints, but not where the wall over gives none", () => {
    assert.match(
      messages({ right: "outside pier over joint 1/8" })[0]!,
      /found `joint 1\/16 in` here and `joint 1\/8 in` at `back`, wanted one joint/,
    );
    assert.deepEqual(messages({}), []);
  });

  it("is told where the other wall doesn't answer", () => {
    const text = outsideText().replace(/ {2}left outside back.*\n/, "");
    const { diagnostics } = run(text, ALONE);
    assert.ok(
      diagnostics.some(({ message }) => message.includes("wanted `left outside back under` there")),
    );
  });
});
