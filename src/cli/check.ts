import { run } from "../engine.js";
import type { Diagnostic } from "../model/index.js";
import { findingJson } from "../sheets/index.js";
import { paintFor } from "./colours.js";
import { Failure } from "./failure.js";
import { findPlans } from "./find-plans.js";
import { inReadingOrder } from "./findings.js";
import { sayFailure } from "./failure-text.js";
import type { Host } from "./host.js";
import { shownPath } from "./paths.js";
import { PlanFiles } from "./plan-files.js";
import { sarifLog } from "./report-sarif.js";
import { textReport } from "./report-text.js";
import type { CheckRequest } from "./request.js";
import { MANY, shardOf } from "./split-work.js";
import { takeStandardInput } from "./standard-input.js";
import { counted, EXIT, exitOf, type Tally, tallyOf, tallyWords } from "./tally.js";

/** What a check found. */
interface Checked {
  readonly files: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/** `gaugelath check`: tells what is wrong with plans. What can't be read doesn't stop the rest. */
export async function check(request: CheckRequest, host: Host): Promise<number> {
  const plans = new PlanFiles(host.folder, request.root);
  const fromInput = request.places.includes("-") ? [await takeStandardInput(plans, host)] : [];
  const found = findPlans(
    request.places.filter((place) => place !== "-"),
    host.folder,
  );
  const failures = [...found.failures];
  const files = shardOf([...fromInput, ...found.files], request.shard);
  const checked =
    files.length < MANY || fromInput.length > 0
      ? checkAll(files, plans, failures)
      : await checkTogether(files, request.root, failures, host);
  for (const failure of failures) sayFailure(failure, host);
  const tally = tallyOf(checked.diagnostics);
  await host.out(report(request, checked, tally, plans, host));
  return failures.length > 0 ? EXIT.failed : exitOf(tally, request.strict);
}

/** Runs each plan in turn and keeps only what was found, so that many large ones fit in memory. */
function checkAll(files: readonly string[], plans: PlanFiles, failures: Failure[]): Checked {
  const read: string[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const file of files) {
    try {
      diagnostics.push(...run(plans.open(file), plans.sourceOf(file)).diagnostics);
      read.push(file);
    } catch (error) {
      if (!(error instanceof Failure)) throw error;
      failures.push(error);
    }
  }
  const touched = new Set([...read, ...plans.used]);
  for (const file of touched) diagnostics.push(...plans.faultsOf(file));
  return { files: read, diagnostics: inReadingOrder(diagnostics, read) };
}

/** The same on all cores; loaded when it is needed, so that one plan's check starts as fast as before. */
async function checkTogether(
  files: readonly string[],
  root: string | null,
  failures: Failure[],
  host: Host,
): Promise<Checked> {
  const { doJobs } = await import("./do-jobs.js");
  const jobs = files.map((file) => ({ kind: "check", file }) as const);
  const setting = { folder: host.folder, root, git: null, pictures: false };
  const answers = await doJobs(jobs, setting, host, "checking plans");
  const read: string[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const [i, answer] of answers.entries()) {
    if (answer.kind === "failed") failures.push(new Failure(answer.message, answer.hint));
    if (answer.kind !== "check") continue;
    read.push(files[i]!);
    diagnostics.push(...answer.diagnostics);
  }
  return { files: read, diagnostics: inReadingOrder(diagnostics, read) };
}

/** The text that a finding stands in; another thread may have read it. */
function textOf(file: string, plans: PlanFiles): string {
  try {
    return plans.open(file);
  } catch {
    return "";
  }
}

function report(
  { format }: CheckRequest,
  { files, diagnostics }: Checked,
  tally: Tally,
  plans: PlanFiles,
  host: Host,
): Iterable<string> {
  const shown = (file: string): string => shownPath(file, host.folder);
  switch (format) {
    case "sarif":
      return [JSON.stringify(sarifLog(diagnostics, files, host.folder), null, 2), "\n"];
    case "json": {
      const findings = diagnostics.map((found) => findingJson(found, shown));
      const log = { schema: 1, files: files.map(shown), diagnostics: findings };
      return [JSON.stringify(log, null, 2), "\n"];
    }
    case "text": {
      const sources = { textOf: (file: string) => textOf(file, plans), shownPath: shown };
      const summary = `${counted(files.length, "plan")} checked: ${tallyWords(tally)}\n`;
      return [...textReport(diagnostics, sources, paintFor(host.colours.out)), summary];
    }
  }
}
