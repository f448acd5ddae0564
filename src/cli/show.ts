import path from "node:path";
import { run } from "../engine.js";
import { showText } from "../sheets/index.js";
import { inReadingOrder } from "./findings.js";
import type { Host } from "./host.js";
import { slashed } from "./paths.js";
import { homeOf } from "./plan-home.js";
import { PlanFiles } from "./plan-files.js";
import type { ShowRequest } from "./request.js";
import { takeStandardInput } from "./standard-input.js";
import { EXIT } from "./tally.js";

/** A statement that brings another file. */
const USES = /^\s*use\b/m;

/** `gaugelath show`: a plan as it is laid, a course a line, for git's diff. */
export async function show(request: ShowRequest, host: Host): Promise<number> {
  const plans = new PlanFiles(host.folder, request.root);
  const file =
    request.file === "-"
      ? await takeStandardInput(plans, host)
      : slashed(path.resolve(host.folder, request.file));
  const text = plans.open(file);
  const home = USES.test(text) ? homeOf(file, host.folder, plans) : null;
  const { solved, diagnostics } = run(text, home ?? plans.sourceOf(file));
  const all = inReadingOrder([...plans.faultsOf(file), ...diagnostics], [file]);
  await host.out(showText(solved, all));
  return EXIT.clean;
}
