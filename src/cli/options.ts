import { optionsJson, optionsText } from "../sheets/index.js";
import type { Host } from "./host.js";
import { outputPath, runOnePlan, sayFindings } from "./one-plan.js";
import type { OptionsRequest } from "./request.js";
import { writeWhole } from "./write-whole.js";

/** `gaugelath options`: the best few starts of each wall side by side. Findings go to standard error. */
export async function options(request: OptionsRequest, host: Host): Promise<number> {
  const one = await runOnePlan(request, host);
  const exit = sayFindings(one, request.strict, host);
  const { format, output } = request;
  const { solved } = one.outcome;
  const result = format === "text" ? optionsText(solved) : optionsJson(solved);
  if (output === null || output === "-") await host.out(result);
  else writeWhole(outputPath(output, one, host), output, result);
  return exit;
}
