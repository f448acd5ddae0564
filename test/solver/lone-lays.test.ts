import assert from "node:assert/strict";
import { isLaidWhole, isLeft, loneLays, startAcross } from "../../src/solver/lone-lays.js";
import { planOf } from "../language/telling.js";
import { type PanelText, panelText } from "./free-wall-text.js";
import { area, layOf, wallOf } from "./several-lays.js";

const NICHE = "niche n {\n at 8 to 12, 18 to 22\n size 8 x 8\n movement 1/8\n }";
const SASH = "window sash {\n at 26, 18 to 20\n size 8 x 8\n movement 1/8\n }";

function lone(parts: PanelText) {
  const plan = planOf(panelText(parts));
  const [wall] = plan.walls;
  return { wall: wall!, ...loneLays(plan, wall!) };
}

describe("the lays of a wall, each alone", () => {
  it("are told from the bottom up, each as a wall that has it alone", () => {
    const { wall, lays } = lone({});
    assert.deepEqual(
      lays.map((each) => [each.lay.name, each.wall.lays.map(({ name }) => name), each.of]),
      [
        ["dado", ["dado"], wall],
        ["field", ["field"], wall],
      ],
    );
  });

  it("leave free what lies in them, and the top where they alone end higher", () => {
    const { lays, wall } = lone({ openings: `${NICHE}\n${SASH}`, height: "36 to 40" });
    const [dado, field] = lays;
    assert.deepEqual([dado!.own, dado!.wall.stop], [{ openings: [], stop: false }, null]);
    assert.deepEqual(
      dado!.wall.openings.map(({ free }) => free),
      [
        { x: null, y: null },
        { x: null, y: null },
      ],
    );
    assert.deepEqual(field!.own, { openings: [0, 1], stop: true });
    assert.equal(field!.wall.stop, wall.stop);
    assert.equal(field!.wall.openings[0], wall.openings[0]);
  });

  it("speak of the openings of their own wall where they start from one", () => {
    const { lays } = lone({
      openings: `${NICHE}\n${SASH}`,
      field: "across tile centred on sash",
      dado: "across tile centred on sash",
    });
    for (const { wall } of lays) {
      const { across } = wall.lays[0]!;
      assert.ok(across && "centre" in across && across.centre.on === "opening");
      assert.equal(across.centre.opening, wall.openings[1]);
    }
  });

  it("are the wall itself where one lay has all of it", () => {
    const { plan, wall } = wallOf([layOf("field")]);
    const [only] = loneLays(plan, wall).lays;
    assert.equal(only!.wall, wall);
    assert.equal(only!.isWhole, true);
    assert.equal(isLaidWhole(wall), true);
    const { wall: low } = wallOf([layOf("low", { area: area({}, { courses: 2 }) })]);
    assert.equal(isLaidWhole(low), false);
  });

  it("are left to the search but for those of which all is stated", () => {
    const { lays } = lone({ dado: "across full tile from left" });
    assert.deepEqual(
      lays.map((each) => [startAcross(each), isLeft(each)]),
      [
        ["stated", false],
        ["open", true],
      ],
    );
  });

  it("follow another lay where their head joints go on from it, and are left only for a joint", () => {
    const more = (joint: string) =>
      `lay field {\n bond stack\n joint ${joint}\n covers top to 30\n courses 1, 1 of dado, 1 of field\n }`;
    const starts = (joint: string) =>
      lone({ more: more(joint) }).lays.map((each) => `${startAcross(each)} ${isLeft(each)}`);
    assert.deepEqual(starts("1/8").slice(2), ["open true", "open true", "follows false"]);
    assert.deepEqual(starts("1/8 to 1/4").at(-1), "follows true");
  });
});
