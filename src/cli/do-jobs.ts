import type { Worker } from "node:worker_threads";
import type { Host } from "./host.js";
import { type Answer, type Job, JobDesk, type Setting } from "./job-desk.js";
import { MANY } from "./split-work.js";
import { Progress } from "./progress.js";

/** Jobs are handed out so many at a time, few enough that all threads end together. */
const HANDFUL = 8;

/** Does all jobs, on all cores where there are many; the answers are in the order of the jobs. */
export async function doJobs(
  jobs: readonly Job[],
  setting: Setting,
  host: Host,
  doing: string,
): Promise<Answer[]> {
  const progress = new Progress(jobs.length, doing, host);
  try {
    if (host.worker === null || jobs.length < MANY) return await doAlone(jobs, setting, progress);
    const { availableParallelism } = await import("node:os");
    const threads = Math.min(availableParallelism(), Math.ceil(jobs.length / HANDFUL));
    if (threads < 2) return await doAlone(jobs, setting, progress);
    return await doTogether(jobs, setting, { program: host.worker, threads, progress });
  } finally {
    progress.end();
  }
}

async function doAlone(
  jobs: readonly Job[],
  setting: Setting,
  progress: Progress,
): Promise<Answer[]> {
  const desk = await JobDesk.open(setting);
  const answers: Answer[] = [];
  for (let at = 0; at < jobs.length; at += HANDFUL) {
    answers.push(...(await desk.answer(jobs.slice(at, at + HANDFUL))));
    progress.tell(answers.length);
  }
  return answers;
}

interface Crew {
  readonly program: string;
  readonly threads: number;
  readonly progress: Progress;
}

async function doTogether(
  jobs: readonly Job[],
  setting: Setting,
  { program, threads, progress }: Crew,
): Promise<Answer[]> {
  const answers: Answer[] = new Array<Answer>(jobs.length);
  let next = 0;
  let done = 0;
  const work = (worker: Worker) =>
    new Promise<void>((resolve, reject) => {
      let from = 0;
      const hand = () => {
        from = next;
        next = Math.min(jobs.length, next + HANDFUL);
        if (from === next) resolve();
        else worker.postMessage(jobs.slice(from, next));
      };
      worker.on("message", (ready: readonly Answer[]) => {
        ready.forEach((answer, i) => (answers[from + i] = answer));
        done += ready.length;
        progress.tell(done);
        hand();
      });
      worker.on("error", reject);
      worker.on("exit", () => reject(new Error("a worker thread ended before its work")));
      hand();
    });
  const { Worker } = await import("node:worker_threads");
  const workers = Array.from(
    { length: threads },
    () => new Worker(program, { workerData: setting }),
  );
  try {
    await Promise.all(workers.map(work));
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return answers;
}
