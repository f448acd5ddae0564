import assert from "node:assert/strict";
import { once } from "node:events";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { CLEAN } from "./plans.js";
import { workplace } from "./workplace.js";

const program = fileURLToPath(new URL("../../dist/cli/worker.cjs", import.meta.url));

describe("the built worker", () => {
  const place = workplace({ "clean.tileplan": CLEAN });

  it("answers a handful of jobs with a handful of answers", async () => {
    const workerData = { folder: place.folder, root: null, git: null, pictures: false };
    const worker = new Worker(program, { workerData, execArgv: [] });
    try {
      const job = { kind: "check", file: place.path("clean.tileplan") };
      worker.postMessage([job, { ...job, file: place.path("gone.tileplan") }]);
      const [answers] = (await once(worker, "message")) as [{ kind: string }[]];
      assert.deepEqual(
        answers.map(({ kind }) => kind),
        ["check", "failed"],
      );
    } finally {
      await worker.terminate();
    }
  });
});
