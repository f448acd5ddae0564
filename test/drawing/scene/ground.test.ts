import assert from "node:assert/strict";
import { boundsOfPoints } from "../../../src/drawing/picture.js";
import {
  bareOutline,
  groundBands,
  hiddenStrips,
  openingBox,
} from "../../../src/drawing/scene/ground.js";
import { planOf, solvedOf, solvedWallOf, wallText } from "../support/scene-of.js";

/** Inches as the picture writes them. */
const inches = (n: number) => Math.round(n * 25_400) / 1000;

function bandsOf(inside: string): ReturnType<typeof groundBands> {
  return groundBands(solvedWallOf(planOf(wallText(inside))).solved);
}

describe("the ground", () => {
  it("is the bare wall, bent where it was measured", () => {
    const { solved } = solvedWallOf(
      planOf(wallText("  bottom pan measured 0: 0, 20: -1, 40: 0 movement 1/8")),
    );
    assert.deepEqual(bareOutline(solved), [0, 0, 508, 25.4, 1016, 0, 1016, -762, 0, -762]);
  });

  it("has soft joints in their true widths", () => {
    const soft = bandsOf("  left wall movement 1/4").find(
      ({ kind, part }) => kind === "soft" && part === "left",
    );
    const { left, right, top, bottom } = boundsOfPoints(soft!.rings[0]!);
    assert.deepEqual([left, right, top, bottom], [0, 6.35, -762, 0]);
  });

  it("tells a hard joint at an edge from a soft one", () => {
    const band = bandsOf("  left wall joint 1/4").find(({ part }) => part === "left");
    assert.equal(band!.kind, "grout");
  });

  it("has a joint between an opening and the tile, or a bead inside its frame", () => {
    const at = "at 12, 9\n    size 10 x 10\n    movement 1/8";
    const plain = bandsOf(`  window w {\n    ${at}\n  }`).find(({ part }) => part === "opening-w")!;
    assert.equal(plain.kind, "soft");
    assert.equal(boundsOfPoints(plain.rings[0]!).left, inches(12 - 1 / 8));
    assert.equal(boundsOfPoints(plain.rings[1]!).left, inches(12));
    const framed = bandsOf(`  window w {\n    ${at}\n    frame nose mitre\n    inset 0\n  }`);
    const bead = framed.find(({ part }) => part === "opening-w")!;
    assert.equal(bead.kind, "bead");
    assert.equal(boundsOfPoints(bead.rings[0]!).left, inches(12));
    assert.equal(boundsOfPoints(bead.rings[1]!).left, inches(12 + 1 / 8));
  });

  it("shows the next wall's build where this wall laps over, and the hidden strip where it laps under", () => {
    const plan = solvedOf(
      planOf(
        [
          wallText("  right corner other over movement 1/8"),
          wallText("  left corner back under movement 1/8", "other"),
        ].join("\n"),
      ),
    );
    const [over, under] = plan.walls;
    const build = groundBands(over!).find(({ kind }) => kind === "build")!;
    // 3/8 in of tile on 1/8 in of bed.
    assert.equal(boundsOfPoints(build.rings[0]!).left, inches(39.5));
    assert.deepEqual(hiddenStrips(over!), []);
    const [strip] = hiddenStrips(under!);
    assert.equal(strip!.side, "left");
    assert.equal(boundsOfPoints(strip!.ring).right, inches(0.5));
    assert.deepEqual(strip!.limit, [12.7, 0, 12.7, -762]);
  });

  it("lets a door end at the bare floor between its jambs", () => {
    const { solved } = solvedWallOf(
      planOf(
        wallText(
          "  bottom floor measured 0: 0, 40: -4 movement 1/8\n  door d {\n    at 10, 0\n    size 10 x 20\n  }",
        ),
      ),
    );
    assert.equal(openingBox(solved.wall, solved.region.takeaways[0]!).bottom, -2 * 25_400_000);
  });

  it("stands a bench on the step under it, and lets a door beside it down to the floor", () => {
    const { solved } = solvedWallOf(
      planOf(
        wallText(
          "  leg left 12 down 6 floor movement 1/8\n  bottom pan movement 1/8\n  door d {\n    at 2, 0\n    size 8 x 20\n  }\n  bench b {\n    at 20\n    size 10 x 8\n    movement 1/8\n  }",
        ),
      ),
    );
    const [door, bench] = solved.region.takeaways.map((each) => openingBox(solved.wall, each));
    assert.equal(door!.bottom, -6 * 25_400_000);
    assert.equal(bench!.bottom, 0);
  });
});
