import assert from "node:assert/strict";
import { exampleText } from "../support/examples.js";
import { Plans } from "./plans.js";

describe("the picture's blocks", () => {
  it("are tiles, trims, walls and what stands in them, outer ones first, with their places", () => {
    const plans = new Plans();
    const { blocks } = plans.service.picture(plans.open(exampleText("niche-wall.tileplan")));
    assert.deepEqual(
      blocks.map(({ kind, name, wall }) => `${kind} ${name} on ${wall ?? "any"}`),
      [
        "tile slab on any",
        "wall north on north",
        "edge bottom on north",
        "edge left on north",
        "edge right on north",
        "edge top on north",
        "niche shelf on north",
        "hole spout on north",
        "lay slab on north",
      ],
    );
    const wall = blocks.find(({ kind }) => kind === "wall")!.place.range;
    const lay = blocks.find(({ kind }) => kind === "lay")!.place.range;
    assert.ok(wall.start.line < lay.start.line && lay.end.line < wall.end.line);
  });
});
