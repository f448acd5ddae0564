import { parentPort, workerData } from "node:worker_threads";
import { type Job, JobDesk, type Setting } from "./job-desk.js";

/** What a worker thread runs: it answers the jobs that it is handed until it is ended. */
const desk = JobDesk.open(workerData as Setting);
parentPort!.on("message", (jobs: readonly Job[]) => {
  void desk.then((open) => open.answer(jobs)).then((answers) => parentPort!.postMessage(answers));
});
