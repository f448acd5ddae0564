import assert from "node:assert/strict";
import {
  type FromComparison,
  isComparisonState,
  isFromComparison,
  isToComparison,
  type ToComparison,
} from "../../src/preview/comparison-messages.js";
import { AGAINST, comparisonOf } from "./support/show-comparison.js";
import { TWO_WALLS } from "./support/show-plan.js";

const look = { way: "slider", wall: null } as const;
const uri = "file:///a.tileplan";

const TO: readonly ToComparison[] = [
  { type: "plan", uri, name: "a.tileplan", against: AGAINST, look },
  { type: "against", words: "the last commit" },
  { type: "missing", why: "a.tileplan was deleted." },
  ...(["sides", "overlay", "slider"] as const).map((way) => ({
    type: "comparison" as const,
    comparison: comparisonOf({ way, wall: null }),
  })),
  { type: "comparison", comparison: comparisonOf(look, TWO_WALLS, TWO_WALLS) },
];

const FROM: readonly FromComparison[] = [
  { type: "ready" },
  { type: "look", look },
  { type: "painted", version: 4, way: "sides" },
];

describe("messages between the extension and the page of a comparison", () => {
  it("pass at their own end", () => {
    for (const message of TO) assert.ok(isToComparison(message), message.type);
    for (const message of FROM) assert.ok(isFromComparison(message), message.type);
  });

  it("don't pass when a key is missing or of another kind", () => {
    const ends = [
      [TO, isToComparison],
      [FROM, isFromComparison],
    ] as const;
    for (const [messages, isKnown] of ends) {
      for (const message of messages) {
        for (const [key, value] of Object.entries(message)) {
          const another = typeof value === "number" ? "4" : 3;
          assert.equal(isKnown({ ...message, [key]: undefined }), false, key);
          assert.equal(isKnown({ ...message, [key]: another }), false, key);
        }
      }
    }
  });

  it("know what a plan can be compared with", () => {
    const plan = (against: unknown) => ({ type: "plan", uri, name: "a", against, look });
    const revision = { kind: "revision", revision: "HEAD~1" };
    for (const against of [AGAINST, revision, { kind: "plan", uri }]) {
      assert.ok(isToComparison(plan(against)));
      assert.ok(isComparisonState({ uri, against, look }));
    }
    for (const against of [{ kind: "revision" }, { kind: "plan" }, { kind: "x" }, null]) {
      assert.equal(isToComparison(plan(against)), false);
      assert.equal(isComparisonState({ uri, against, look }), false);
    }
  });
});
