import assert from "node:assert/strict";
import { run } from "../../src/engine.js";

const text = (first: string, second: string, allow = ""): string => `prefer {
  ${first}
  ${second}
}
${allow}
tile field {
  face 4 x 4
  thickness 1/4
}
wall back {
  size 40 x 30
  bottom free
  top free
  left free
  right free
  window sash {
    at 12, 13
    size 16 x 8
    movement 0
  }
  lay field {
    bond stack
    joint 0
    across full tile from left
  }
}
`;

function told(plan: string) {
  const { diagnostics } = run(plan, { file: "a", root: "", read: () => null });
  return diagnostics.filter(({ code }) => code === "wish/not-met");
}

describe("wish/not-met", () => {
  const [bottom, sill] = ["whole courses at bottom", "whole courses at sill of sash"];

  it("tells a wish that is missed, at its line, with what it would cost", () => {
    const [found, ...others] = told(text(bottom, sill));
    assert.deepEqual(others, []);
    assert.equal(found!.severity, "information");
    assert.equal(found!.range.start.line, 2);
    assert.match(
      found!.message,
      /^the wish `whole courses at sill of sash` is not met: 1 in off; met, it would cost `whole courses at bottom` \(1 in off\)/,
    );
  });

  it("is silent where all are met", () => {
    assert.deepEqual(told(text(bottom, "")), []);
  });

  it("is turned round with the ranks", () => {
    assert.match(told(text(sill, bottom))[0]!.message, /^the wish `whole courses at bottom`/);
  });

  it("is allowed with a reason", () => {
    const [found] = told(text(bottom, sill, 'allow wish/not-met "the sill is stone"'));
    assert.equal(found!.allowed, "the sill is stone");
  });
});
