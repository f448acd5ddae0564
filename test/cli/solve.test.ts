import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { gaugelath } from "./capture.js";
import { BROKEN, CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

interface Solved {
  schema: number;
  plan: string;
  walls: { lays: { pieces: { id: string; outline: number[][] }[] }[] }[];
  diagnostics: { code: string; file: string }[];
}

describe("gaugelath solve", () => {
  const place = workplace({
    "clean.tileplan": CLEAN,
    "faulty.tileplan": FAULTY,
    "broken.tileplan": BROKEN,
  });

  it("gives the solved plan as JSON, its findings in it", async () => {
    const { exit, out } = await gaugelath(place, ["solve", "faulty.tileplan", "--format", "json"]);
    const solved = JSON.parse(out) as Solved;
    assert.equal(solved.schema, 1);
    assert.equal(solved.plan, "Test bench");
    assert.equal(solved.walls[0]!.lays[0]!.pieces.length, 6);
    assert.equal(solved.walls[0]!.lays[0]!.pieces[0]!.id, "back/1/1");
    const found = solved.diagnostics.map(({ code, file }) => [code, file]);
    assert.deepEqual(found, [["joint/too-narrow", "faulty.tileplan"]]);
    assert.equal(exit, 1);
  });

  it("keeps standard output for the result: findings go to standard error", async () => {
    const { out, err } = await gaugelath(place, ["solve", "faulty.tileplan", "--format", "json"]);
    assert.doesNotThrow(() => JSON.parse(out) as unknown);
    assert.match(err, /^faulty\.tileplan:17:.*\[joint\/too-narrow\]\n/);
    assert.match(err, /\n1 error, no warnings\n$/);
  });

  it("gives a short reading for people", async () => {
    const { exit, out, err } = await gaugelath(place, ["solve", "clean.tileplan"]);
    assert.equal(
      out,
      `Test bench

wall back (Back wall): 12 3/8 in x 8 5/16 in
  2 courses, 6 pieces, 0 cuts
  joint 1/16
  across full tile from left
  up full course from bottom

Before you cut: tile dust holds silica, so cut wet or with extraction; a saw near water runs on a
GFCI. Follow local code, the maker's instructions and a licensed trade.
`,
    );
    assert.deepEqual([exit, err], [0, ""]);
  });

  it("solves what could be understood of a broken plan", async () => {
    const { exit, out } = await gaugelath(place, ["solve", "broken.tileplan", "--format", "json"]);
    assert.ok((JSON.parse(out) as Solved).walls[0]!.lays[0]!.pieces.length >= 6);
    assert.equal(exit, 1);
  });

  it("writes to a file, or not at all", async () => {
    const words = ["solve", "clean.tileplan", "--format", "json", "-o"];
    assert.deepEqual(await gaugelath(place, [...words, "out.json"]), { exit: 0, out: "", err: "" });
    const { out } = await gaugelath(place, words.slice(0, -1));
    assert.equal(readFileSync(place.path("out.json"), "utf8"), out);
    const { exit, err } = await gaugelath(place, [...words, "gone/out.json"]);
    assert.match(err, /^gaugelath: gone\/out\.json could not be written: there is no such file/);
    assert.equal(exit, 2);
    assert.ok(!existsSync(place.path("gone")));
  });

  it("reads standard input for -", async () => {
    const { out } = await gaugelath(place, ["solve", "-"], { input: CLEAN });
    assert.match(out, /^Test bench\n/);
  });

  it("takes one plan, not a folder", async () => {
    const { exit, err } = await gaugelath(place, ["solve", "."]);
    assert.equal(exit, 2);
    assert.match(err, /it is a folder/);
  });
});
