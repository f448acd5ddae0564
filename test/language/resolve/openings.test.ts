import assert from "node:assert/strict";
import type { Opening } from "../../../src/model/index.js";
import { INCH, planOf, told, wallOf, wallText } from "../telling.js";

const sash = (lines: string, kind = "window", name = "sash"): string =>
  `  ${kind} ${name} {\n    ${lines.replaceAll("; ", "\n    ")}\n  }`;

function toldOf(lines: string): string[] {
  return told(wallText(lines));
}

describe("an opening", () => {
  it("has all that its block says", () => {
    const [opening] = wallOf(
      sash("at 18, 46 1/4; size 24 x 36; frame nose mitre; inset 1/4; movement 1/16"),
    ).openings;
    assert.equal(opening!.kind, "window");
    assert.deepEqual(opening!.at, { x: 18 * INCH, y: 46.25 * INCH });
    assert.deepEqual(opening!.size, { across: 24 * INCH, up: 36 * INCH });
    assert.equal(opening!.movement, INCH / 16);
    const { trim, join, inset } = opening!.frame!;
    assert.deepEqual([trim.name, join, inset], ["nose", "mitre", INCH / 4]);
  });

  it("leaves unsaid what its block leaves unsaid", () => {
    const [opening] = wallOf(sash("at 18, 46; size 24 x 36")).openings;
    assert.deepEqual([opening!.frame, opening!.movement], [null, null]);
  });

  it("needs a place and a size", () => {
    assert.deepEqual(toldOf(sash("movement 1/8")), [
      "plan/missing [sash] found no `at`, wanted the opening's lower left corner, such as `at 18, 46`",
      "plan/missing [sash] found no `size`, wanted the opening's, such as `size 24 x 36`",
    ]);
    assert.deepEqual(toldOf(sash("at 18; size 24 x 36")), [
      "plan/missing [at] found one length, wanted the height too, such as `at 18, 46`",
    ]);
  });

  it("that is a door stands on the level line unless the plan says otherwise", () => {
    assert.deepEqual(wallOf(sash("at 18; size 24 x 80", "door")).openings[0]!.at, {
      x: 18 * INCH,
      y: 0,
    });
    assert.equal(wallOf(sash("at 18, 2; size 24 x 80", "door")).openings[0]!.at.y, 2 * INCH);
  });

  it("that stands before the wall is on the floor, or hangs from the ceiling, unless it has a height", () => {
    const placed = (lines: string, kind: string) => {
      const [{ at, reaches }] = wallOf(sash(lines, kind)).openings as [Opening];
      return [at.y / INCH, reaches];
    };
    assert.deepEqual(placed("at 18; size 24 x 18", "bench"), [0, "floor"]);
    assert.deepEqual(placed("at 18; size 24 x 5", "curb"), [0, "floor"]);
    assert.deepEqual(placed("at 18; size 24 x 12", "soffit"), [84, "ceiling"]);
    assert.deepEqual(placed("at 18, 16; size 24 x 2", "bench"), [16, null]);
    assert.deepEqual(placed("at 18, 80; size 24 x 12", "soffit"), [80, null]);
  });

  it("that stands before the wall has no frame, and no place left free", () => {
    assert.deepEqual(toldOf(sash("at 18; size 24 x 18; frame nose mitre", "bench")), [
      "plan/frame [frame] found a frame round a bench, wanted it round a window, a niche or a door: a bench stands before the wall",
    ]);
    assert.deepEqual(toldOf(sash("at 18 to 20; size 24 x 18", "curb")), [
      "plan/range [20] found a range, wanted a curb's own place: only a niche or a window may be left free",
    ]);
  });

  it("over another is told, whatever it is", () => {
    const over = `${sash("at 0, 10; size 24 x 24")}\n${sash("at 18; size 24 x 18", "bench", "seat")}`;
    assert.deepEqual(toldOf(over), [
      "plan/opening-overlap [seat] found `seat` over `sash`, wanted openings apart",
    ]);
  });

  it("may touch every side of its wall", () => {
    assert.deepEqual(toldOf(sash("at 0, 0; size 60 x 96")), []);
  });

  const outside: Record<string, string> = {
    "at -1/64, 0; size 4 x 4": "left side at -1/32+ in, wanted it inside the wall, at 0 in or more",
    "at 56 1/32, 0; size 4 x 4":
      "right side at 60 1/32 in, wanted it inside the wall, at 60 in or less",
    "at 0, -1; size 4 x 4": "bottom at -1 in, wanted it inside the wall, at 0 in or more",
    "at 0, 93; size 4 x 4": "top at 97 in, wanted it inside the wall, at 96 in or less",
  };
  for (const [lines, wanted] of Object.entries(outside)) {
    it(`outside its wall is told and left out: ${lines}`, () => {
      const [message, ...others] = toldOf(sash(lines));
      assert.ok(
        message!.startsWith("plan/opening-outside [sash] found the window's ") &&
          others.length === 0,
      );
      if (!lines.startsWith("at -1/64")) assert.ok(message!.endsWith(wanted), message);
      assert.deepEqual(wallOf(sash(lines)).openings, []);
    });
  }

  it("may reach to where a measured side is", () => {
    const lines = `  bottom pan measured 0: -1\n  right wall measured 0: 1/2\n${sash("at 56 1/2, -1; size 4 x 4")}`;
    assert.deepEqual(toldOf(lines), []);
  });

  it("over another is told with the other's place and left out; touching is fine", () => {
    const one = sash("at 10, 10; size 10 x 10");
    assert.deepEqual(toldOf(`${one}\n${sash("at 20, 10; size 10 x 10", "niche", "soap")}`), []);
    const over = `${one}\n${sash("at 19 63/64, 19 63/64; size 10 x 10", "niche", "soap")}`;
    assert.deepEqual(toldOf(over), [
      "plan/opening-overlap [soap] found `soap` over `sash`, wanted openings apart",
    ]);
    assert.deepEqual(
      wallOf(over).openings.map(({ name }) => name),
      ["sash"],
    );
  });

  it("of a name that is taken is told and left out", () => {
    const lines = `${sash("at 0, 0; size 4 x 4")}\n${sash("at 10, 0; size 4 x 4")}`;
    assert.deepEqual(toldOf(lines), [
      "plan/name-twice [sash] found an opening called `sash` again, wanted another name",
    ]);
    assert.equal(wallOf(lines).openings.length, 1);
  });

  it("whose heading has lost its name is kept", () => {
    assert.equal(wallOf("  window {\n    at 1, 1\n    size 4 x 4\n  }").openings.length, 1);
  });

  it("has an inset only with a frame, and of less than half of it", () => {
    assert.deepEqual(toldOf(sash("at 1, 1; size 4 x 6; inset 1/4")), [
      "plan/inset [inset] found an inset without a frame, wanted a `frame` in this block",
    ]);
    assert.deepEqual(toldOf(sash("at 1, 1; size 4 x 6; frame nose butt; inset 1 63/64")), []);
    assert.deepEqual(toldOf(sash("at 1, 1; size 4 x 6; frame nose butt; inset 2")), [
      "plan/inset [2] found 2 in, wanted less than half of the opening's 4 in",
    ]);
  });

  it("may have a depth, and a fall over it", () => {
    const insideOf = (lines: string, kind = "niche") =>
      wallOf(sash(lines, kind)).openings[0]!.inside;
    assert.equal(insideOf("at 1, 1; size 4 x 6"), null);
    assert.deepEqual(insideOf("at 1, 1; size 4 x 6; depth 3 1/2"), {
      depth: 3.5 * INCH,
      fall: null,
      tiled: true,
      lays: {},
    });
    for (const kind of ["niche", "window", "bench", "curb"]) {
      assert.deepEqual(insideOf("at 1, 1; size 4 x 6; depth 4; fall -1/8", kind), {
        depth: 4 * INCH,
        fall: -INCH / 8,
        tiled: kind === "niche" || kind === "window",
        lays: {},
      });
    }
  });

  it("with a trim that isn't there has no frame", () => {
    const lines = sash("at 1, 1; size 4 x 6; frame noze butt");
    assert.deepEqual(toldOf(lines), [
      "plan/name-unknown [noze] found no trim called `noze`; did you mean `nose`?",
    ]);
    assert.equal(wallOf(lines).openings[0]!.frame, null);
  });
});

describe("an opening in a step of the outline", () => {
  const half = "0, 0 to 60, 0 to 60, 90 to 20, 90 to 20, 40 to 0, 40";
  const plan = (lines: string): string =>
    wallText(lines).replace("  size 60 x 96\n", `  outline ${half}\n`);
  const niche = (at: string) => `  niche n {\n    at ${at}\n    size 10 x 10\n  }`;

  it("is told at its place, and left out", () => {
    assert.deepEqual(told(plan(niche("5, 60"))), [
      "plan/opening-outside [n] found the niche in a step of the outline, where no wall is, wanted it in the wall",
    ]);
    assert.deepEqual(planOf(plan(niche("10, 40"))).walls[0]!.openings, []);
  });

  it("may reach into a step, and may lie beside it", () => {
    assert.deepEqual(told(plan(niche("10.000001, 40"))), []);
    assert.deepEqual(told(plan(niche("5, 30"))), []);
    assert.equal(planOf(plan(niche("5, 39.999999"))).walls[0]!.openings.length, 1);
  });

  it("is told of a hole, too", () => {
    assert.deepEqual(told(plan("  hole v at 10, 60 across 4")), [
      "plan/hole-outside [v] found the hole in a step of the outline, where no wall is, wanted it in the wall",
    ]);
    assert.deepEqual(told(plan("  hole v at 10, 20 across 4")), []);
  });
});

describe("an opening over a slope of the outline", () => {
  const plan = (lines: string): string =>
    wallText(lines).replace("  size 60 x 96\n", "  outline 0, 0 to 60, 0 to 60, 90 to 0, 30\n");
  const opening = (kind: string, at: string) =>
    `  ${kind} n {\n    at ${at}\n    size 10 x 10\n  }`;
  const over = (kind: string) =>
    `plan/opening-outside [n] found the ${kind} over a slope of the outline, wanted it inside: ` +
    "only what of it is in the wall takes tile away, without the corners that it has there";

  it("is told at its place, and kept", () => {
    // The slope is as high as 30 plus the place across: at 20 it is 50.
    assert.deepEqual(told(plan(opening("niche", "20, 40.000001"))), [over("niche")]);
    assert.deepEqual(told(plan(opening("window", "20, 45"))), [over("window")]);
    assert.equal(planOf(plan(opening("niche", "20, 45"))).walls[0]!.openings.length, 1);
  });

  it("is silent just under it, and of what stands before the wall", () => {
    assert.deepEqual(told(plan(opening("niche", "20, 40"))), []);
    assert.deepEqual(told(plan(opening("soffit", "20, 45"))), []);
  });

  it("is told beyond it", () => {
    const [message] = told(plan(opening("niche", "20, 70")));
    assert.match(message!, /found the niche outside the outline, wanted it inside/);
  });
});
