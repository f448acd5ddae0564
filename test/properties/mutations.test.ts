import assert from "node:assert/strict";
import { takeInShares } from "../support/take-in-shares.js";

const PLANS = 10_000;

describe(`${PLANS} mutated plans`, () => {
  it("are read, solved, checked and drawn: no crash, none over a second, every range in its text", async () => {
    const seeds = { from: 0, many: PLANS };
    const taken = await takeInShares<Taken>("take-mutated-plans.ts", seeds);
    assert.deepEqual(
      taken.flatMap(({ faults }) => faults),
      [],
    );
    assert.equal(
      taken.reduce((sum, { plans }) => sum + plans, 0),
      PLANS,
    );
  }).timeout(600_000);
});

/** What a worker has to say of its share. */
export interface Taken {
  readonly plans: number;
  readonly faults: readonly string[];
}
