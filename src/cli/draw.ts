import type { Host } from "./host.js";
import { outputPath, runOnePlan, sayFindings } from "./one-plan.js";
import type { DrawRequest } from "./request.js";
import { writeWhole } from "./write-whole.js";

/** `gaugelath draw`: the plan's picture, as SVG. Findings go to standard error. */
export async function draw(request: DrawRequest, host: Host): Promise<number> {
  const one = await runOnePlan(request, host);
  const exit = sayFindings(one, request.strict, host);
  const { output } = request;
  // Loaded only here: what draws without a page is slow to load, and other commands do without.
  const { drawHeadless } = await import("../drawing/headless.js");
  const picture = [drawHeadless(one.outcome.scene())];
  if (output === "-") await host.out(picture);
  else writeWhole(outputPath(output, one, host), output, picture);
  return exit;
}
