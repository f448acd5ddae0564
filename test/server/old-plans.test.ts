import assert from "node:assert/strict";
import { pathOf } from "../../src/server/addresses.js";
import { KnownFiles } from "../../src/server/known-files.js";
import { OldPlans } from "../../src/server/old-plans.js";
import { createService } from "../../src/service/index.js";
import { lastCommit, STOCK_URI, stockOf, URI, wallOf } from "./comparing.js";

/** Old plans over files as they are now and as they were in each revision. */
function plansOver(
  now: Readonly<Record<string, string>>,
  old: Readonly<Record<string, string>> = {},
) {
  const asked: string[] = [];
  const files = new KnownFiles({
    read: (uri) => Promise.resolve(now[uri] ?? null),
    find: () => Promise.resolve([]),
  });
  const plans = new OldPlans(createService(files), files, (uri, revision) => {
    asked.push(`${revision} ${uri}`);
    return Promise.resolve(old[uri] ?? null);
  });
  return { plans, files, asked };
}

describe("old plans", () => {
  it("use files as they were in their revision, each asked for once", async () => {
    const { plans, asked } = plansOver({ [STOCK_URI]: stockOf(6) }, { [STOCK_URI]: stockOf(4) });
    const plan = (await plans.ready(lastCommit(wallOf(40))))!;
    await plans.ready(lastCommit(wallOf(44), "file:///plans/b.tileplan"));
    assert.deepEqual(asked, [`a1 ${STOCK_URI}`]);
    assert.equal(plan.outcome.solved.walls[0]!.lays[0]!.lattice.face.across, 4 * 25_400_000);
    assert.deepEqual(
      plan.outcome.diagnostics.filter(({ code }) => code.startsWith("plan/")),
      [],
    );
  });

  it("use files as they are now where they have no revision", async () => {
    const { plans } = plansOver({ [STOCK_URI]: stockOf(6) });
    const plan = (await plans.ready({ uri: URI, text: wallOf(40), revision: null }))!;
    assert.equal(plan.outcome.solved.walls[0]!.lays[0]!.lattice.face.across, 6 * 25_400_000);
  });

  it("are solved once for each text", async () => {
    const { plans } = plansOver({}, { [STOCK_URI]: stockOf() });
    const first = await plans.ready(lastCommit(wallOf(40)));
    assert.equal(await plans.ready(lastCommit(wallOf(40))), first);
    assert.notEqual(await plans.ready({ ...lastCommit(wallOf(44)), revision: "b2" }), first);
  });

  it("are a file's own newest text where no other is told", async () => {
    const now = { [STOCK_URI]: stockOf(), [URI]: wallOf(40) };
    const { plans, files } = plansOver(now);
    const old = { uri: URI, text: null, revision: null };
    const first = (await plans.ready(old))!;
    assert.equal(first.outcome.solved.walls[0]!.wall.size.across, 40 * 25_400_000);
    files.open({ uri: URI, file: pathOf(URI), version: 1, text: wallOf(44) });
    const second = (await plans.ready(old))!;
    assert.equal(second.outcome.solved.walls[0]!.wall.size.across, 44 * 25_400_000);
    assert.equal(await plans.ready({ ...old, uri: "file:///plans/none.tileplan" }), null);
  });

  it("do without a file that the revision hasn't, and say so", async () => {
    const { plans } = plansOver({ [STOCK_URI]: stockOf() }, {});
    const plan = (await plans.ready(lastCommit(wallOf(40))))!;
    assert.ok(plan.outcome.diagnostics.some(({ code }) => code === "plan/use-missing"));
  });

  it("forget those that were not asked for lately, and read them again", async () => {
    const { plans, asked } = plansOver({}, { [STOCK_URI]: stockOf() });
    const first = await plans.ready(lastCommit(wallOf(40)));
    for (let i = 0; i < 40; i++) {
      await plans.ready({ ...lastCommit(wallOf(40)), revision: `r${i}` });
    }
    assert.notEqual(await plans.ready(lastCommit(wallOf(40))), first);
    assert.equal(asked.filter((each) => each.startsWith("a1 ")).length, 2);
  });
});
