import assert from "node:assert/strict";
import { orderOfWork } from "../../../src/sheets/paper/order-of-work.js";
import { solveClean } from "../../support/solve-text.js";
import { planOf, wallText } from "../setting-out/plans.js";
import { benchGround, exampleGround, groundFor } from "./sheet-bench.js";

const SLOPED = { bottom: "pan measured 0: 0, 40: 1/2", up: "joint at 4" };

describe("the order of work", () => {
  const three = orderOfWork(exampleGround("three-walls.tileplan"));
  const at = (words: string, steps = three) => {
    const found = steps.findIndex((step) => step.includes(words));
    assert.ok(found >= 0, words);
    return found;
  };

  it("goes from the backing to the soft joints", () => {
    const order = [
      "Have the backing sound",
      "Waterproof the wall",
      "Strike the level line",
      "Measure what the table of checks names",
      "Lay the first uncut course dry",
      "Pull a tile now and again",
      "Back wall: before",
      "Grout when",
      "Fill the soft joints",
    ].map((words) => at(words));
    assert.deepEqual(
      order,
      [...order].sort((a, b) => a - b),
    );
    assert.equal(at("Fill the soft joints"), three.length - 1);
  });

  it("sets covered walls first, and says why", () => {
    assert.match(
      three[at("Back wall: before")]!,
      /before Entry wall and Plumbing wall, whose tile covers/,
    );
    assert.match(three[at("Entry wall: after")]!, /after Back wall, whose end its tile covers/);
    assert.ok(at("Back wall: before") < at("Entry wall: after"));
  });

  it("starts on a ledger where the bottom course is scribed, and sets that course last", () => {
    const steps = orderOfWork(benchGround(wallText(SLOPED)));
    const ledger = at("fix a ledger", steps);
    assert.match(
      steps[ledger]!,
      /top edge at 4 1\/16 in \(103\.2 mm\) over the level line, under course 2/,
    );
    assert.match(steps[ledger + 1]!, /set courses 2 to 6, the top one cut/);
    assert.match(
      steps[ledger + 2]!,
      /take the ledger away and set course 1 last, each piece scribed/,
    );
  });

  it("puts a wall's ledger under its own first uncut course, where the working line is higher", () => {
    const steep = wallText({ ...SLOPED, name: "side", bottom: "pan measured 0: 0, 40: 4 1/2" });
    const steps = orderOfWork(benchGround(wallText(SLOPED), steep));
    assert.match(steps[at("then the working line", steps)]!, /8 3\/16 in/);
    assert.match(steps[at("back wall: fix a ledger", steps)]!, /at 4 1\/16 in .* under course 2/);
  });

  it("starts with course 1 on spacers where that is whole", () => {
    const steps = orderOfWork(benchGround(wallText()));
    assert.ok(steps.every((step) => !step.includes("ledger")));
    assert.match(steps[at("start with course 1 on spacers", steps) + 1]!, /set courses 1 to 6/);
  });

  it("waterproofs and flood-tests behind wet tile alone, and asks for 95 % contact there", () => {
    // ANSI A108.5 3.3.2, quoted in ceramictilefoundation.org/blog/insufficient-mortar.
    const dry = orderOfWork(benchGround(wallText())).join("\n");
    const wet = orderOfWork(benchGround(wallText(SLOPED))).join("\n");
    assert.doesNotMatch(dry, /flood-test/);
    assert.match(wet, /flood-test/);
    assert.match(dry, /touch at least 80 % of the tile's back.*ANSI A108\.5 3\.3\.2/);
    assert.match(wet, /touch at least 95 % of the tile's back/);
  });

  it("asks for the flatness of long tile where there is any, and in metres of metric plans", () => {
    // Quoted in tileletter.com/to-shim-or-not-to-shim; nhbc-standards.co.uk 9.1.7 and 9.2.5.
    const long = planOf(wallText()).replace("face 4 x 4", "face 15 x 4");
    assert.match(orderOfWork(benchGround(wallText()))[0]!, /flat within 1\/4 in in 10 ft/);
    assert.match(
      orderOfWork(groundFor(long))[0]!,
      /flat within 1\/8 in in 10 ft and 1\/16 in in 2 ft/,
    );
    assert.match(
      orderOfWork(exampleGround("niche-wall.tileplan"))[0]!,
      /3 mm under a 2 m straightedge/,
    );
  });

  it("sets an opening's trim before the courses close round it", () => {
    assert.match(
      three[at("Back wall: set")]!,
      /cut round window sash as the courses reach it, and set its trim/,
    );
  });

  it("is empty where nothing is laid", () => {
    const { solved } = solveClean("units inch\n");
    const ground = benchGround(wallText());
    assert.deepEqual(orderOfWork({ ...ground, solved }), []);
  });
});
