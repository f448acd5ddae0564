import assert from "node:assert/strict";
import { plainStatement } from "./plain-statement.js";

describe("wishes in the syntax tree", () => {
  const wishes: Record<string, unknown> = {
    "courses meet": { wanted: "courses-meet" },
    "bond goes on": { wanted: "bond-goes-on" },
    "centre on sash": { wanted: "centre", opening: "sash" },
    "no cut under 1 1/2": { wanted: "no-cut", under: "1 1/2" },
    "whole courses at bottom": { wanted: "whole-courses", at: "bottom" },
    "whole courses at top": { wanted: "whole-courses", at: "top" },
    "whole courses at sill of sash": { wanted: "whole-courses", at: "sill", opening: "sash" },
    "whole courses at head of top": { wanted: "whole-courses", at: "head", opening: "top" },
    "equal ends": { wanted: "equal-ends" },
    "few cuts": { wanted: "few-cuts" },
  };
  for (const [text, wish] of Object.entries(wishes)) {
    it(`has ${text} for the room and for a wall`, () => {
      const wanted = { kind: "wish", wish };
      assert.deepEqual(plainStatement(`prefer {\n  ${text}\n}\n`, 0, 0), wanted);
      assert.deepEqual(
        plainStatement(`wall w {\n  prefer {\n    ${text}\n  }\n}\n`, 0, 0, 0),
        wanted,
      );
    });
  }
});
