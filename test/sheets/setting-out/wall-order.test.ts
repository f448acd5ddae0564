import assert from "node:assert/strict";
import { comesBefore, wallOrder } from "../../../src/sheets/setting-out/wall-order.js";
import { exampleSource, exampleText } from "../../support/examples.js";
import { run } from "../../../src/engine.js";
import { laid, wallText } from "./plans.js";

const names = (walls: ReturnType<typeof wallOrder>) => walls.map(({ wall }) => wall.name);

describe("the order of walls", () => {
  it("sets a wall whose end is covered before the wall that covers it", () => {
    const name = "three-walls.tileplan";
    const { solved } = run(exampleText(name), exampleSource(name));
    assert.deepEqual(names(solved.walls.slice()), ["left", "back", "plumbing"]);
    assert.deepEqual(names(wallOrder(solved.walls)), ["back", "left", "plumbing"]);
  });

  it("keeps the plan's order where nothing is covered", () => {
    const { plan } = laid(wallText({ name: "b" }), wallText({ name: "a" }));
    assert.deepEqual(names(wallOrder(plan.walls)), ["b", "a"]);
  });

  it("knows which of two walls covers the other", () => {
    const { plan } = laid(
      wallText({ name: "over", right: "corner under over" }),
      wallText({ name: "under", left: "corner over under" }),
    );
    const [over, under] = plan.walls;
    assert.equal(comesBefore(under!, over!), true);
    assert.equal(comesBefore(over!, under!), false);
  });

  it("ends where walls cover each other in a ring, and loses none", () => {
    const { plan } = laid(
      wallText({ name: "a", left: "corner c under", right: "corner b over" }),
      wallText({ name: "b", left: "corner a under", right: "corner c over" }),
      wallText({ name: "c", left: "corner b under", right: "corner a over" }),
    );
    assert.deepEqual(names(wallOrder(plan.walls)).sort(), ["a", "b", "c"]);
  });
});
