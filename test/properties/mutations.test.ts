import assert from "node:assert/strict";
import { fork } from "node:child_process";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";

const PLANS = 10_000;
const WORKER = fileURLToPath(new URL("../support/take-mutated-plans.ts", import.meta.url));

describe(`${PLANS} mutated plans`, () => {
  it("are read, solved, checked and drawn: no crash, none over a second, every range in its text", async () => {
    const workers = Math.min(4, availableParallelism());
    const taken = await Promise.all(
      Array.from({ length: workers }, (_, worker) => {
        const from = Math.round((PLANS * worker) / workers);
        const to = Math.round((PLANS * (worker + 1)) / workers);
        return takePlans(from, to);
      }),
    );
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

/** Takes a share of the plans in a process of its own, so that its processor time is its own. */
function takePlans(from: number, to: number): Promise<Taken> {
  return new Promise((resolve, reject) => {
    const worker = fork(WORKER, [String(from), String(to)], { execArgv: ["--import", "tsx"] });
    worker.once("message", (taken: Taken) => resolve(taken));
    worker.once("error", reject);
    worker.once("exit", (code) => {
      if (code !== 0) reject(new Error(`plans ${from} to ${to}: the process ended with ${code}`));
    });
  });
}
