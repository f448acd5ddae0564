import assert from "node:assert/strict";
import { JobDesk } from "../../src/cli/job-desk.js";
import { CLEAN, FAULTY } from "./plans.js";
import { workplace } from "./workplace.js";

describe("JobDesk", () => {
  const place = workplace({ "clean.tileplan": CLEAN, "faulty.tileplan": FAULTY });

  function desk(pictures = false): Promise<JobDesk> {
    return JobDesk.open({ folder: place.folder, root: null, git: null, pictures });
  }

  function pair(before: string | null, after: string | null) {
    const full = (name: string | null) => name && place.path(name);
    const names = { name: (after ?? before)!, before: full(before), after: full(after) };
    return { kind: "compare", pair: names } as const;
  }

  it("answers in the order of the jobs, and goes on after what it can't read", async () => {
    const files = ["faulty", "gone", "clean"].map((name) => place.path(`${name}.tileplan`));
    const answers = await (await desk()).answer(files.map((file) => ({ kind: "check", file })));
    assert.deepEqual(
      answers.map((each) => (each.kind === "check" ? each.diagnostics.length : each.kind)),
      [1, "failed", 0],
    );
  });

  it("answers with data that crosses threads", async () => {
    const answers = await (await desk(true)).answer([pair("clean.tileplan", "faulty.tileplan")]);
    assert.deepEqual(structuredClone(answers), answers);
  });

  it("lays nothing where the text is the same and uses no other file", async () => {
    const [answer] = await (await desk()).answer([pair("clean.tileplan", "clean.tileplan")]);
    assert.deepEqual(answer, { kind: "same" });
  });

  it("compares a new plan with the same plan without walls", async () => {
    const [answer] = await (await desk()).answer([pair(null, "clean.tileplan")]);
    assert.ok(answer?.kind === "compare" && !answer.sameText);
    assert.deepEqual(answer.comparison.facts, []);
    assert.equal(answer.comparison.walls[0]?.name.before, null);
  });

  it("draws where pictures are wanted and something changed", async () => {
    place.write({ "lower.tileplan": CLEAN.replace("x 8 5/16", "x 7 5/16") });
    const [drawn] = await (await desk(true)).answer([pair("clean.tileplan", "lower.tileplan")]);
    assert.ok(drawn?.kind === "compare");
    assert.match(drawn.pictures?.overlay ?? "", /^<svg /);
    assert.match(drawn.pictures?.sides[0]?.svg ?? "", /Back wall, before/);
  });
});
