import assert from "node:assert/strict";
import { cornersMet } from "../../../src/sheets/options/corners-met.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { run } from "../../../src/engine.js";
import { bench, STATED } from "./bench.js";

const NAME = "room.tileplan";

/** Four walls round two inside corners and an outside one, on one line, 35 7/32 up, unless the end wall's is told. */
function room(line = "line") {
  const text = exampleText(NAME);
  const at = text.indexOf("wall end");
  const changed =
    text.slice(0, at) + text.slice(at).replace("up joint at line", `up joint at ${line}`);
  return run(changed, exampleSource(NAME)).solved;
}

describe("corners whose courses meet", () => {
  it("are all where every wall stands on one line", () => {
    assert.deepEqual(cornersMet(room()), { met: 3, of: 3 });
    assert.deepEqual(cornersMet(room(), "back"), { met: 2, of: 2 });
  });

  it("are not those of a wall that stands a 32nd lower; a whole course lower they are again", () => {
    assert.deepEqual(cornersMet(room("35 3/16")), { met: 1, of: 3 });
    assert.deepEqual(cornersMet(room("35 3/16"), "plumbing"), { met: 1, of: 1 });
    assert.deepEqual(cornersMet(room("35 3/16"), "pier"), { met: 0, of: 1 });
    // A course is 2 7/8 and its joint, 2 15/16.
    assert.deepEqual(cornersMet(room("32 9/32")), { met: 3, of: 3 });
  });

  it("are none where no corner is", () => {
    assert.equal(cornersMet(bench(STATED).solved), null);
  });
});
