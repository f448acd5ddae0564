import assert from "node:assert/strict";
import { edited, Plans, wallPlan } from "../plans.js";
import { stateOf } from "../state-of.js";
import { TWO_LAYS } from "../../sheets/options/bench.js";
import { codesOf, mend, mendsOf } from "./mending.js";

const CODE = "opening/off-joint";
const START = "    across full tile from left\n    up full course from bottom\n";

/** A wall of 5 7/8 x 2 7/8 tile at 1/16 with a niche, or a window. */
function plan(opening: string, start = START, bond = "stack"): string {
  return wallPlan(`    joint 1/16\n${start}`, `  size 60 x 47 3/16\n${opening}`).replace(
    "bond stack",
    `bond ${bond}`,
  );
}

const niche = (at: string, size: string, more = ""): string =>
  `  niche n {\n    at ${at}\n    size ${size}\n${more}  }\n`;

/** Where the lay of the first wall stands. */
function latticeOf(text: string): readonly number[] {
  const [lay] = stateOf(text).outcome.solved.walls[0]!.lays;
  const { x, y, face, joint } = lay!.lattice;
  return [x % (face.across + joint), y];
}

describe("a niche off the joints", () => {
  const off = plan(niche("12 3/8, 12", "11 15/16 x 5 15/16"));

  it("is moved onto them, and nothing else is written anew", () => {
    const { text, codes, fix } = mend(
      off,
      CODE,
      /^Move n onto the joints: at 11 15\/16 in, 11 13\/16 in$/,
    );
    assert.ok(!codes.includes(CODE));
    assert.equal(text, plan(niche("11 15/16, 11 13/16", "11 15/16 x 5 15/16")));
    assert.equal(fix.mends?.code, CODE);
  });

  it("is sized to whole tiles where its size can't be on them", () => {
    const wide = plan(niche("12, 12", "14 x 7"));
    assert.deepEqual(
      mendsOf(wide, CODE).filter(({ title }) => title.startsWith("Move")),
      [],
    );
    const { text, codes } = mend(
      wide,
      CODE,
      /^Size n to 2 tiles x 2 courses: 11 15\/16 in x 5 15\/16 in$/,
    );
    assert.ok(!codes.includes(CODE));
    assert.match(text, /size 11 15\/16 x 5 15\/16/);
  });

  it("is moved onto those of the lay that it lies in", () => {
    const { text, codes } = mend(
      TWO_LAYS,
      CODE,
      /^Move shelf onto the joints: at 12 3\/8 in, 41 in$/,
    );
    assert.ok(!codes.includes(CODE));
    assert.match(text, /at 12 3\/8, 41\n/);
  });

  it("keeps the names of lengths that stay as they are", () => {
    const named = `let sill = 11 13/16\n${plan(niche("12 3/8, sill", "11 15/16 x 5 15/16"))}`;
    assert.match(mend(named, CODE, /^Move n/).text, /at 11 15\/16, sill\n/);
  });

  it("has the chosen start written down with it, so that the tile stays where it is", () => {
    const open = plan(niche("13, 13", "11 15/16 x 5 15/16"), "");
    const fix = mendsOf(open, CODE).find(({ title }) => title.startsWith("Move"));
    assert.match(fix!.title, /, and write the chosen start down$/);
    const moved = edited(open, fix!.edits);
    assert.deepEqual(latticeOf(moved), latticeOf(open));
    assert.ok(!codesOf(moved).includes(CODE), moved);
  });

  it("says in how many courses of a running bond its upright sides are on them", () => {
    const running = plan(niche("12 3/8, 12", "11 15/16 x 5 15/16"), START, "running 1/2");
    const { codes } = mend(
      running,
      CODE,
      /^Move n onto the joints.* \(upright in 1 of 2 courses\)$/,
    );
    assert.ok(!codes.includes(CODE));
  });

  it("is left alone where its statements can't be understood", () => {
    const broken = off.replace("size 11 15/16", "movement by 3\n    size 11 15/16");
    assert.deepEqual(
      mendsOf(broken, CODE).filter(({ title }) => /^(Move|Size)/.test(title)),
      [],
    );
  });

  it("is no longer told after any such mend, whatever the bond, the start and the niche", () => {
    const starts = [
      START,
      "    across tile centred on n\n    up full course under n\n",
      "    across joint centred on n\n    up full course over n\n",
      "    across tile centred at 7.3\n    up joint at 5.123456\n",
    ];
    const mores = ["", "    movement 1/16\n", "    frame nose mitre\n    inset 1/4\n"];
    let mended = 0;
    for (const bond of ["stack", "running 1/2", "running 1/3"]) {
      for (const start of starts) {
        for (const more of mores) {
          for (const [at, size] of [
            ["14.1, 13.3", "12 x 12"],
            ["20, 20", "11 15/16 x 8 7/8"],
            ["17.123457, 11", "9 x 14.000001"],
          ] as const) {
            const text = plan(niche(at, size, more), start, bond);
            for (const fix of mendsOf(text, CODE)) {
              if (!/^(Move|Size)/.test(fix.title)) continue;
              const after = edited(text, fix.edits);
              assert.ok(!codesOf(after).includes(CODE), `${fix.title}\n${text}\n${after}`);
              mended++;
            }
          }
        }
      }
    }
    assert.ok(mended >= 90, `${mended}`);
  });
});

describe("a window off the joints", () => {
  const window = plan("  window s {\n    at 18, 12\n    size 20 x 20\n    movement 1/16\n  }\n");
  const titles = (text: string, line: number): string[] => {
    const plans = new Plans();
    const at = { line, character: 0 };
    const fixes = plans.service.fixes(plans.open(text), { start: at, end: at });
    return fixes.filter(({ mends }) => mends === null).map(({ title }) => title);
  };

  it("may be sized to whole tiles where its lines are, though no rule asks for it", () => {
    const line = window.split("\n").findIndex((each) => each.includes("window s"));
    const [title] = titles(window, line + 1);
    assert.match(title!, /^Size s to 3 tiles x 7 courses: /);
    assert.deepEqual(titles(window, line - 1), []);
  });

  it("is not offered anything once it is on them", () => {
    const line = window.split("\n").findIndex((each) => each.includes("window s"));
    const plans = new Plans();
    const at = { line, character: 0 };
    const [fix] = plans.service
      .fixes(plans.open(window), { start: at, end: at })
      .filter(({ title }) => title.startsWith("Size s"));
    assert.deepEqual(titles(edited(window, fix!.edits), line), []);
  });
});
