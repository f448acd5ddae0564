import { realpathSync } from "node:fs";
import { isEmpty, needsMoreTiles, newFindings, setCoursesAgainst } from "../compare/index.js";
import { type ComparedPair, jsonReport, markdownReport, textReport } from "./compare-report.js";
import { writePictures } from "./compare-pictures.js";
import { doJobs } from "./do-jobs.js";
import { Failure } from "./failure.js";
import { sayFailure } from "./failure-text.js";
import type { Host } from "./host.js";
import type { Setting } from "./job-desk.js";
import { pairPlaces } from "./pair-places.js";
import { pairRevisions } from "./pair-revisions.js";
import { shownPath } from "./paths.js";
import type { PlanPair } from "./plan-pairs.js";
import type { CompareRequest } from "./request.js";
import { shardOf } from "./split-work.js";
import { EXIT } from "./tally.js";

/** `gaugelath compare`: what a change does to the walls. What can't be read doesn't stop the rest. */
export async function compare(request: CompareRequest, host: Host): Promise<number> {
  const folder = realpathSync.native(host.folder);
  const { pairs: all, git } = await pairsFor(request, folder);
  const pairs = shardOf(all, request.shard);
  const pictures =
    request.format === "svg" || (request.format === "markdown" && request.output !== null);
  const setting: Setting = { folder, root: request.root, git, pictures };
  const jobs = pairs.map((pair) => ({ kind: "compare", pair }) as const);
  const answers = await doJobs(jobs, setting, host, "comparing plans");
  const compared: ComparedPair[] = [];
  let same = 0;
  let failed = false;
  for (const [i, answer] of answers.entries()) {
    if (answer.kind === "failed") {
      sayFailure(new Failure(answer.message, answer.hint), host);
      failed = true;
    }
    if (answer.kind === "same") same++;
    if (answer.kind === "compare") compared.push({ pair: pairs[i]!, answer });
  }
  await report(request, compared, same, { ...host, folder });
  if (failed) return EXIT.failed;
  return request.failOn.some((word) => compared.some((each) => FAILS[word](each)))
    ? EXIT.found
    : EXIT.clean;
}

const FAILS: Readonly<Record<CompareRequest["failOn"][number], (each: ComparedPair) => boolean>> = {
  "new-findings": ({ answer }) =>
    newFindings(answer.comparison) + setCoursesAgainst(answer.comparison) > 0,
  "more-tiles": ({ answer }) => needsMoreTiles(answer.comparison),
  any: ({ answer }) => !isEmpty(answer.comparison),
};

async function pairsFor(
  request: CompareRequest,
  folder: string,
): Promise<{ readonly pairs: readonly PlanPair[]; readonly git: Setting["git"] }> {
  if (request.from === null) return { pairs: pairPlaces(request.places, folder), git: null };
  const { Git } = await import("./git.js");
  const git = new Git(folder);
  const top = realpathSync.native(git.top());
  const from = git.commit(request.from);
  const to = request.to === null ? null : git.commit(request.to);
  const revisions = { git, top, from, to };
  const pairs = pairRevisions(request.places, revisions, folder);
  return { pairs, git: { top, from, to } };
}

async function report(
  request: CompareRequest,
  compared: readonly ComparedPair[],
  same: number,
  host: Host,
): Promise<void> {
  switch (request.format) {
    case "text":
      return host.out(textReport(compared, same, host.colours.out));
    case "json":
      return host.out(jsonReport(compared, (file) => shownPath(file, host.folder)));
    case "markdown":
      if (request.output === null) return host.out(markdownReport(compared, same, null));
      return writePictures(compared, same, request.output, host, true);
    case "svg":
      return writePictures(compared, same, request.output, host, false);
  }
}
