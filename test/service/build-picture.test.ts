import assert from "node:assert/strict";
import { exampleText } from "../support/examples.js";
import { Plans, wallPlan } from "./plans.js";

describe("the picture of a document", () => {
  it("has the scene, counts by wall, and findings with their numbers and places", () => {
    const plans = new Plans();
    const document = plans.open(exampleText("faults.tileplan"));
    const picture = plans.service.picture(document);
    assert.deepEqual([picture.uri, picture.version], [document.uri, document.version]);
    assert.equal(picture.whole, true);
    assert.equal(picture.simplified, false);
    const walls = picture.scene.walls.filter(({ name }) => !name.includes("."));
    assert.equal(walls.length, picture.walls.length, "besides them, the insides of openings");
    const first = picture.walls.find(({ name }) => name === "first")!;
    const errors = picture.findings.filter(
      ({ wall, severity, allowed }) => wall === "first" && severity === "error" && allowed === null,
    );
    assert.equal(first.counts.error, errors.length);
    const numbers = new Set(picture.scene.badges.map(({ number }) => number));
    for (const { number } of errors) assert.ok(number !== null && numbers.has(number));
  });

  it("has the room unfolded where it is asked for and corners join walls, its pieces and marks those of the walls", () => {
    const plans = new Plans();
    const room = plans.open(exampleText("room.tileplan"));
    assert.equal(plans.service.picture(room).unfolds, true);
    assert.equal(plans.service.picture(room).room, null);
    const { scene, room: unfolded } = plans.service.picture(room, true);
    for (const wall of unfolded!.walls) {
      const own = scene.walls.find(({ name }) => name === wall.name)!;
      assert.deepEqual([wall.pieces, wall.marks], [own.pieces, own.marks]);
    }
    const alone = plans.service.picture(plans.open(wallPlan("    joint 1/16\n")), true);
    assert.deepEqual([alone.unfolds, alone.room], [false, null]);
  });

  it("is not whole while part of the text can't be understood", () => {
    const plans = new Plans();
    const broken = wallPlan("    joint 1/16\n    up full course\n");
    assert.equal(plans.service.picture(plans.open(broken)).whole, false);
  });

  it("is simplified when there are too many pieces to draw each", () => {
    const plans = new Plans();
    const stated =
      "    joint 1/16\n    across tile centred on wall\n    up full course from bottom\n";
    const text = wallPlan(stated, "  size 600ft x 100ft\n");
    const picture = plans.service.picture(plans.open(text));
    assert.equal(picture.simplified, true);
    const boxes = picture.scene.walls[0]!.pieces.reduce(
      (sum, { boxes }) => sum + boxes.length / 4,
      0,
    );
    assert.ok(boxes < 10_000, `${boxes} boxes`);
  });

  it("can be posted: nothing in it but plain data", () => {
    const plans = new Plans();
    const picture = plans.service.picture(plans.open(exampleText("three-walls.tileplan")));
    assert.deepEqual(JSON.parse(JSON.stringify(picture)), structuredClone(picture));
  });

  it("counts what is allowed no more, but still shows it with its reason", () => {
    const plans = new Plans();
    const text = wallPlan("    joint 1/16\n    across tile centred at 3 3/4\n");
    const allowed = text.replace("    joint", '    allow cut/sliver "behind the door"\n    joint');
    const [told, silenced] = [text, allowed].map((each) => plans.service.picture(plans.open(each)));
    const slivers = told!.findings.filter(({ code }) => code === "cut/sliver");
    assert.ok(slivers.length > 0);
    const reasons = silenced!.findings.filter(({ code }) => code === "cut/sliver");
    assert.ok(reasons.every((finding) => finding.allowed === "behind the door"));
    assert.equal(reasons.length, slivers.length);
    const counts = [told, silenced].map((each) => {
      const { error, warning, information } = each!.walls[0]!.counts;
      return error + warning + information;
    });
    assert.equal(counts[0]! - counts[1]!, slivers.length);
  });
});
