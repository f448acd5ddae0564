import { readingText, solvedJson } from "../sheets/index.js";
import type { Host } from "./host.js";
import { outputPath, type OnePlan, runOnePlan, sayFindings } from "./one-plan.js";
import { shownPath } from "./paths.js";
import type { SolveRequest } from "./request.js";
import { writeWhole } from "./write-whole.js";

/** `gaugelath solve`: the solved plan, as JSON or as a short reading. Findings go to standard error. */
export async function solve(request: SolveRequest, host: Host): Promise<number> {
  const one = await runOnePlan(request, host);
  const exit = sayFindings(one, request.strict, host);
  const { output } = request;
  const result = resultText(request, one, host);
  if (output === null || output === "-") await host.out(result);
  else writeWhole(outputPath(output, one, host), output, result);
  return exit;
}

function resultText({ format }: SolveRequest, one: OnePlan, host: Host): Iterable<string> {
  const { solved } = one.outcome;
  if (format === "text") return readingText(solved);
  return solvedJson(solved, one.diagnostics, (file) => shownPath(file, host.folder));
}
