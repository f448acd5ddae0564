import assert from "node:assert/strict";
import { wallFacts } from "../../../src/sheets/paper/wall-facts.js";
import { wallText } from "../setting-out/plans.js";
import { benchGround, groundFor, wallOf } from "./sheet-bench.js";
import { planOf } from "../setting-out/plans.js";

describe("the facts of a wall", () => {
  const ground = benchGround(wallText({ bond: "running 1/2", bottom: "pan" }));
  const facts = new Map(
    wallFacts(ground, wallOf(ground), "B").rows.map(([what, figure]) => [what, figure]),
  );

  it("are the wall, where it is seen from, the plan and its revision", () => {
    assert.equal(facts.get("Wall"), "back wall, marked B in labels");
    assert.match(facts.get("Seen")!, /facing the wall/);
    assert.equal(facts.get("Plan"), "Setting-out bench");
    assert.equal(facts.get("Revision"), "r1");
    assert.equal(facts.get("Bare wall"), "40 in across x 24 in up");
  });

  it("are the tile's real size, the joint, the offset and the build-up", () => {
    assert.equal(facts.get("Tile"), "4 x 4 tile");
    assert.equal(facts.get("Real face"), "4 in across x 4 in up, 3/8 in thick");
    assert.equal(facts.get("Joint"), "1/8 in");
    assert.equal(
      facts.get("Bond"),
      "running bond, 1/2 offset: each course 2 1/16 in to the right of the one under it, from course 1 again after 2",
    );
    assert.equal(facts.get("Bed"), "1/8 in after embedding; with the tile 1/2 in");
    assert.equal(facts.get("Bottom"), "pan, soft joint 1/8 in");
  });

  it("are the lot and what may not be turned, where the plan says so", () => {
    const text = planOf(wallText()).replace("face 4 x 4", 'face 4 x 4\n  directional\n  lot "7B"');
    const stated = groundFor(text);
    const rows = wallFacts(stated, wallOf(stated), "B").rows;
    assert.ok(rows.some(([what, figure]) => what === "Lot" && figure === "7B"));
    assert.ok(
      rows.some(([what, figure]) => what === "Real face" && figure!.endsWith("may not be turned")),
    );
  });

  it("leave the revision out where nobody knows it", () => {
    const rows = wallFacts({ ...ground, revision: null }, wallOf(ground), "B").rows;
    assert.ok(rows.every(([what]) => what !== "Revision"));
  });

  it("say exactly how wide a joint is that was chosen as wide as no spacer", () => {
    // 5 courses of 4 in, each with a joint of 0.08 in, between joints of 1/8 in.
    const text = planOf(wallText({ size: "40 x 20.65" })).replace(
      "    joint 1/8\n",
      "    joint 1/16 to 3/16\n",
    );
    const open = groundFor(`prefer {\n whole courses at top\n}\n${text}`);
    const told = new Map(
      wallFacts(open, wallOf(open), "B").rows.map(([what, figure]) => [what, figure]),
    );
    assert.equal(told.get("Joint"), "3/32- in: exactly 2.032 mm, nearest spacers 5/64 in");
  });
});
