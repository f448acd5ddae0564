import path from "node:path";
import { type Outcome, run } from "../engine.js";
import type { Diagnostic } from "../model/index.js";
import { paintFor } from "./colours.js";
import { Failure } from "./failure.js";
import { inReadingOrder } from "./findings.js";
import type { Host } from "./host.js";
import { shownPath, slashed } from "./paths.js";
import { PlanFiles } from "./plan-files.js";
import { textReport } from "./report-text.js";
import { takeStandardInput } from "./standard-input.js";
import { exitOf, tallyOf, tallyWords } from "./tally.js";

/** A plan that was read and run. */
export interface OnePlan {
  readonly file: string;
  readonly plans: PlanFiles;
  readonly outcome: Outcome;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads and runs the plan that a command names. Throws a Failure when it can't be read. */
export async function runOnePlan(
  request: { readonly file: string; readonly root: string | null },
  host: Host,
): Promise<OnePlan> {
  const plans = new PlanFiles(host.folder, request.root);
  const file =
    request.file === "-"
      ? await takeStandardInput(plans, host)
      : slashed(path.resolve(host.folder, request.file));
  const outcome = run(plans.open(file), plans.sourceOf(file));
  const faults = [file, ...plans.used].flatMap((each) => plans.faultsOf(each));
  const diagnostics = inReadingOrder([...faults, ...outcome.diagnostics], [file]);
  return { file, plans, outcome, diagnostics };
}

/** Tells on standard error what is wrong with the plan, and gives the exit that follows from it. */
export function sayFindings({ plans, diagnostics }: OnePlan, strict: boolean, host: Host): number {
  const tally = tallyOf(diagnostics);
  if (diagnostics.length > 0) {
    const sources = {
      textOf: (file: string) => plans.textOf(file),
      shownPath: (file: string) => shownPath(file, host.folder),
    };
    for (const part of textReport(diagnostics, sources, paintFor(host.colours.err))) host.err(part);
    host.err(`${tallyWords(tally)}\n`);
  }
  return exitOf(tally, strict);
}

/** Where a command writes its result. Throws a Failure where that is the plan itself. */
export function outputPath(output: string, { file }: OnePlan, host: Host): string {
  const absolute = path.resolve(host.folder, output);
  if (slashed(absolute) !== file) return absolute;
  throw new Failure(`${output} is the plan itself`, "name another file after -o");
}
