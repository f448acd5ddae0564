import assert from "node:assert/strict";
import { run } from "../src/engine.js";
import { CLEAN, FAULTY } from "./cli/plans.js";

const ALONE = { file: "a.tileplan", root: "", read: () => null };

describe("run", () => {
  it("goes from a text to a plan, its layout, its findings and its picture", () => {
    const { plan, solved, diagnostics, scene } = run(CLEAN, ALONE);
    assert.equal(plan.title, "Test bench");
    assert.equal(solved.walls[0]!.lays[0]!.pieces.count, 6);
    assert.deepEqual(diagnostics, []);
    assert.equal(scene().walls[0]!.name, "back");
  });

  it("tells what the language finds before what the rules find", () => {
    const text = FAULTY.replace("    bond stack", "    odd words\n    bond stack");
    const codes = run(text, ALONE).diagnostics.map((found) => found.code);
    assert.equal(codes.at(-1), "joint/too-narrow");
    assert.ok(codes.length > 1 && !codes[0]!.startsWith("joint/"), codes.join());
  });

  it("shares with the plan before what is laid as it was", () => {
    const before = run(CLEAN, ALONE);
    const wider = CLEAN.replace("joint 1/16", "joint 1/8");
    const [same, other] = [CLEAN, wider].map((text) => run(text, ALONE, before.solved));
    const piecesOf = ({ solved }: typeof before) => solved.walls[0]!.lays[0]!.pieces;
    assert.equal(piecesOf(same!), piecesOf(before));
    assert.notEqual(piecesOf(other!), piecesOf(before));
  });

  it("builds the picture once", () => {
    const { scene } = run(CLEAN, ALONE);
    assert.equal(scene(), scene());
  });

  it("never throws on a text", () => {
    for (const text of ["", "\0", "{{{{", "}", `plan "`, "wall a {\n size 1 x 1\n", "\ud800"]) {
      const { diagnostics, scene } = run(text, ALONE);
      assert.ok(Array.isArray(diagnostics));
      assert.ok(scene().view);
    }
  });
});
