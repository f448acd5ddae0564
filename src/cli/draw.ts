import path from "node:path";
import { buildRoomScene } from "../drawing/index.js";
import { Failure } from "./failure.js";
import type { Host } from "./host.js";
import { outputPath, runOnePlan, sayFindings } from "./one-plan.js";
import type { DrawRequest } from "./request.js";
import { writeWhole } from "./write-whole.js";

/** `gaugelath draw`: the plan's picture, as SVG. Findings go to standard error. Throws a Failure. */
export async function draw(request: DrawRequest, host: Host): Promise<number> {
  refuseOtherEndings(request.output);
  const one = await runOnePlan(request, host);
  const exit = sayFindings(one, request.strict, host);
  const { output } = request;
  // Loaded here alone: the drawing is most of the program, and no other command needs it.
  const { drawHeadless } = await import("../drawing/headless.js");
  const { outcome } = one;
  const scene = request.room ? buildRoomScene(outcome.solved) : outcome.scene();
  const picture = [drawHeadless(scene)];
  if (output === "-") await host.out(picture);
  else writeWhole(outputPath(output, one, host), output, picture);
  return exit;
}

/** SVG under the name of another format would be a file that nothing opens. */
function refuseOtherEndings(output: string): void {
  const ending = path.extname(output).toLowerCase();
  if (ending === "" || ending === ".svg") return;
  throw new Failure(
    `${output}: a picture is drawn as .svg, not as ${ending}`,
    "gaugelath sheet writes .pdf, .png and .dxf",
  );
}
