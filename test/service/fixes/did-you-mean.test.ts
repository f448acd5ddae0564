import assert from "node:assert/strict";
import { wallPlan } from "../plans.js";
import { mend, mendsOf } from "./mending.js";

describe("did you mean", () => {
  it("mends a statement's mistyped word", () => {
    const { text, codes } = mend(wallPlan("    jiont 1/16\n"), "syntax/statement", /`joint`/);
    assert.ok(text.includes("    joint 1/16\n"));
    assert.deepEqual(codes, []);
  });

  it("mends a mistyped name", () => {
    const { text, codes } = mend(
      wallPlan("    joint 1/16\n").replace("lay pressed", "lay presed"),
      "plan/name-unknown",
      /`pressed`/,
    );
    assert.ok(text.includes("lay pressed {"));
    assert.deepEqual(codes, []);
  });

  it("mends a mistyped unit and limit", () => {
    assert.ok(mend("units inhc\n", "plan/units", /`inch`/).text.startsWith("units inch"));
    const { text } = mend("rules { silver 1 }\n", "plan/limit", /`sliver`/);
    assert.equal(text, "rules { sliver 1 }\n");
  });

  it("is silent where nothing is near", () => {
    assert.deepEqual(mendsOf("let a = nothing-like-it\n", "plan/name-unknown"), []);
  });
});
